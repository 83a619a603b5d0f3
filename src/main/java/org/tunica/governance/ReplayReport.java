package org.tunica.governance;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.JsonText;
import org.tunica.casefile.Sha256;

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
        return Sha256.of(text);
    }

    /**
     * Ends the work unless the document tells of these rules.
     *
     * @param rules digest over rules and knowledge of the release
     * @throws FaultyInput when it is no replay, or one of other rules
     */
    public void mustBeOf(String rules) {
        String draft = side("draft");
        if (!draft.equals(rules)) {
            throw fault("$.draft.digest", "is " + draft + ": the replay was made of other rules than these, " + rules);
        }
    }

    /**
     * Ends the work unless these rules were held against those.
     *
     * @param inForce digest over rules and knowledge of the release in force
     * @throws FaultyInput when it was made against others
     */
    public void mustBeAgainst(String inForce) {
        String other = side("against");
        if (!other.equals(inForce)) {
            throw fault(
                    "$.against.digest",
                    "is " + other + ": the replay was made against other rules than those in force, " + inForce);
        }
    }

    private String side(String name) {
        Faults faults = new Faults();
        FieldReader reader =
                new FieldReader(JsonText.parseRecord("replay", text.getBytes(StandardCharsets.UTF_8)), "$", faults);
        if (!reader.requiredText("format").equals(FORMAT)) {
            reader.fault("format", "must be " + FORMAT);
        }
        String digest = reader.required(name, reader.object(name))
                .orElseGet(() -> reader.emptyPart(name))
                .requiredText("digest");
        faults.throwIfAny("replay");
        return digest;
    }

    private static FaultyInput fault(String place, String says) {
        return new FaultyInput("replay", List.of(new Fault(place, says)));
    }
}
