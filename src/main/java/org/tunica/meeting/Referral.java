package org.tunica.meeting;

import java.util.List;
import java.util.Optional;
import tools.jackson.databind.json.JsonMapper;

/**
 * A case that was sent to the meeting, as it is kept.
 *
 * @param meetingId random; the packet goes by it
 * @param question what is asked, in words of whoever sent it
 * @param reasons why it is hard: signs the rules found, and what the sender picked
 * @param date of the meeting it is on, such as 2026-12-01; absent while none is set
 * @param withdrawn whether it no longer waits, without a decision
 */
record Referral(
        String format,
        String meetingId,
        String question,
        List<String> reasons,
        Optional<String> date,
        boolean withdrawn) {
    /** The word it carries under {@code format}. */
    static final String FORMAT = "tunica-referral/1";

    private static final JsonMapper JSON = new JsonMapper();

    Referral {
        reasons = List.copyOf(reasons);
    }

    static Referral of(String meetingId, String question, List<String> reasons, Optional<String> date) {
        return new Referral(FORMAT, meetingId, question, reasons, date, false);
    }

    Referral on(Optional<String> day) {
        return new Referral(format, meetingId, question, reasons, day, false);
    }

    Referral takenBack() {
        return new Referral(format, meetingId, question, reasons, date, true);
    }

    String json() {
        return JSON.writeValueAsString(this);
    }

    static Referral read(String json) {
        return JSON.readValue(json, Referral.class);
    }
}
