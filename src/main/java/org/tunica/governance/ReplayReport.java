package org.tunica.governance;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.JsonText;

/**
 * What a replay of a release over cases found, as the document {@code tunica-replay/1} it wrote. Here only its digest counts,
 * and which rules it was made with: a replay of other rules proves nothing.
 *
 * @param text of the document
 */
public record ReplayReport(String text) {
    /** The word a replay carries under {@code format}. */
    public static final String FORMAT = "tunica-replay/1";

    /** Digest of the document: what somebody who acknowledges it signs. */
    public String digest() {
        return Digest.of(text);
    }

    /**
     * Ends the work unless the document tells of these rules.
     *
     * @param rules digest over rules and knowledge of the release
     * @throws FaultyInput when it is no replay, or one of other rules
     */
    public void mustBeOf(String rules) {
        Faults faults = new Faults();
        FieldReader reader =
                new FieldReader(JsonText.parseRecord("replay", text.getBytes(StandardCharsets.UTF_8)), "$", faults);
        String format = reader.requiredText("format");
        String draft = reader.required("draft", reader.object("draft"))
                .orElseGet(() -> reader.emptyPart("draft"))
                .requiredText("digest");
        faults.throwIfAny("replay");
        if (!format.equals(FORMAT)) {
            throw fault("$.format", "must be " + FORMAT + ", is " + format);
        }
        if (!draft.equals(rules)) {
            throw fault(
                    "$.draft.digest", "is " + draft + ": the replay was made with other rules than these, " + rules);
        }
    }

    private static FaultyInput fault(String place, String says) {
        return new FaultyInput("replay", List.of(new Fault(place, says)));
    }
}
