package org.tunica.web;

import java.util.List;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.FieldReader;
import org.tunica.knowledge.YamlText;

/**
 * Everything a site can say of its server. Each part reads its own fields and has its own usual values.
 *
 * @param listening where it listens
 * @param recordSystems which record systems may call
 * @param limits how much anyone may ask
 */
public record ServerSettings(Listening listening, RecordSystems recordSystems, Limits limits) {
    /** The word a file of settings must carry under {@code format}. */
    public static final String FORMAT = "tunica-server/1";

    /** @throws FaultyInput when one part of them forbids another */
    public ServerSettings {
        if (recordSystems.calls() == RecordSystems.Calls.UNSIGNED_FOR_TESTS && !listening.isLoopback()) {
            throw new FaultyInput(
                    "settings",
                    List.of(new Fault(
                            "recordSystems.calls", "unsigned calls are for tests, on a loopback address alone")));
        }
    }

    /** What holds where nobody said anything. */
    public static ServerSettings usual() {
        return new ServerSettings(Listening.USUAL, RecordSystems.NONE, Limits.USUAL);
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
        return new ServerSettings(
                Listening.read(reader),
                reader.object("recordSystems").map(RecordSystems::read).orElse(RecordSystems.NONE),
                reader.object("limits").map(Limits::read).orElse(Limits.USUAL));
    }

    /** The same settings, listening elsewhere. */
    public ServerSettings with(Listening other) {
        return new ServerSettings(other, recordSystems, limits);
    }

    /** The same settings, with other record systems. */
    public ServerSettings with(RecordSystems others) {
        return new ServerSettings(listening, others, limits);
    }

    /** The same settings, with other limits. */
    public ServerSettings with(Limits others) {
        return new ServerSettings(listening, recordSystems, others);
    }
}
