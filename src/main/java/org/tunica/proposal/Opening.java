package org.tunica.proposal;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.JsonText;
import org.tunica.signing.JsonPage;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * How a change began: the file {@code change.json} of a working copy.
 *
 * @param number of the change record it will bring, four digits
 * @param author user name
 * @param release version of the release it began with; {@code draft} for the program's own rules
 * @param digest over the rules and knowledge it began with
 * @param on the day, UTC
 */
public record Opening(String number, String author, String release, String digest, LocalDate on) {
    /** The word the file carries under {@code format}. */
    public static final String FORMAT = "tunica-change/1";

    /** The file as text; {@link #read} reads it back. */
    public String toJson() {
        return JsonPage.of(JsonNodeFactory.instance
                .objectNode()
                .put("format", FORMAT)
                .put("number", number)
                .put("author", author)
                .put("release", release)
                .put("digest", digest)
                .put("on", on.toString()));
    }

    /**
     * Reads the file.
     *
     * @throws org.tunica.casefile.FaultyInput with every fault
     */
    public static Opening read(String what, byte[] json) {
        Faults faults = new Faults();
        FieldReader reader = new FieldReader(JsonText.parse(what, json), "$", faults);
        if (!reader.requiredText("format").equals(FORMAT)) {
            reader.fault("format", "must be " + FORMAT);
        }
        String number = reader.requiredText("number");
        if (!number.matches("\\d{4}")) {
            reader.fault("number", "must be four digits in quotes");
        }
        Opening opening = new Opening(
                number,
                reader.requiredText("author"),
                reader.requiredText("release"),
                reader.requiredText("digest"),
                day(reader));
        reader.done();
        faults.throwIfAny(what);
        return opening;
    }

    private static LocalDate day(FieldReader reader) {
        try {
            return LocalDate.parse(reader.requiredText("on"));
        } catch (DateTimeParseException e) {
            reader.fault("on", "is no day such as 2026-03-01");
            return LocalDate.EPOCH;
        }
    }
}
