package org.tunica.archive;

import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.function.Supplier;

/** Ids that nobody can guess or trace. */
public final class RandomIds implements Supplier<String> {
    private static final int BYTES = 12;

    private final SecureRandom random = new SecureRandom();

    @Override
    public String get() {
        byte[] bytes = new byte[BYTES];
        random.nextBytes(bytes);
        return "p-" + HexFormat.of().formatHex(bytes);
    }
}
