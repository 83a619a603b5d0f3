package org.tunica.web;

import org.tunica.casefile.FieldReader;

/**
 * Where to listen.
 *
 * @param address of this machine to bind, such as 127.0.0.1
 * @param port 0 takes a free one
 */
public record Listening(String address, int port) {
    /** Where nobody but this machine can ask. */
    public static final Listening USUAL = new Listening("127.0.0.1", 8080);

    private static final int HIGHEST_PORT = 65_535;

    /** Whether nobody but this machine can ask. */
    boolean isLoopback() {
        return Loopback.is(address);
    }

    static Listening read(FieldReader reader) {
        return new Listening(
                reader.text("address").orElse(USUAL.address),
                WholeNumber.read(reader, "port", 0, HIGHEST_PORT).orElse(USUAL.port));
    }
}
