package org.tunica.couch;

import org.tunica.plan.Advice;
import tools.jackson.databind.json.JsonMapper;

/**
 * A procedure note as it is kept: the page people read, and from what it was made.
 *
 * @param plan number of the plan among those of the case
 * @param delivered number of the record of what was delivered
 * @param release of rules and knowledge it was written with
 * @param state where that release stood
 * @param html the page; the PDF is made from it
 */
public record KeptNote(
        String format,
        String caseRef,
        long plan,
        long delivered,
        String release,
        String state,
        String caution,
        String html) {

    private static final String FORMAT = "tunica-note/1";
    private static final JsonMapper JSON = new JsonMapper();

    static KeptNote of(String caseRef, long plan, long delivered, Advice.Release release, String html) {
        return new KeptNote(
                FORMAT,
                caseRef,
                plan,
                delivered,
                release.version() + " " + release.digest(),
                release.state().word(),
                Advice.CAUTION,
                html);
    }

    String json() {
        return JSON.writeValueAsString(this);
    }

    /** Reads one back. */
    public static KeptNote read(String json) {
        return JSON.readValue(json, KeptNote.class);
    }
}
