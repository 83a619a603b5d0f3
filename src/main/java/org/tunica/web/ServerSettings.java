package org.tunica.web;

import org.tunica.casefile.Faults;
import org.tunica.casefile.FieldReader;
import org.tunica.knowledge.YamlText;

/**
 * Everything a site can say of its server. Each part reads its own fields and has its own usual values.
 *
 * @param listening where it listens
 */
public record ServerSettings(Listening listening) {
    /** The word a file of settings must carry under {@code format}. */
    public static final String FORMAT = "tunica-server/1";

    /** What holds where nobody said anything. */
    public static ServerSettings usual() {
        return new ServerSettings(Listening.USUAL);
    }

    /**
     * Reads a file of settings.
     *
     * @param what the name of the input, for messages
     * @param bytes YAML in UTF-8
     * @throws org.tunica.casefile.FaultyInput with every fault and its place
     */
    public static ServerSettings read(String what, byte[] bytes) {
        Faults faults = new Faults();
        FieldReader reader = new FieldReader(YamlText.parse(what, bytes), what + ":", faults);
        ServerSettings settings = read(reader);
        reader.done();
        faults.throwIfAny(what);
        return settings;
    }

    private static ServerSettings read(FieldReader reader) {
        String format = reader.requiredText("format");
        if (!format.isEmpty() && !format.equals(FORMAT)) {
            reader.fault("format", "must be \"" + FORMAT + "\"");
        }
        return new ServerSettings(Listening.read(reader));
    }

    /** The same settings, listening elsewhere. */
    public ServerSettings with(Listening other) {
        return new ServerSettings(other);
    }
}
