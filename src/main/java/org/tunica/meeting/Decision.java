package org.tunica.meeting;

import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Word;
import org.tunica.plan.Advice;
import tools.jackson.databind.json.JsonMapper;

/**
 * What a meeting decided on a case, as it is kept.
 *
 * @param meetingId of the packet it was decided on
 * @param date of the meeting
 * @param release of the rules whose advice was looked at
 * @param state where that release stood
 * @param segments what was decided for each
 * @param agreed who agreed, by user name or initials
 * @param dissent who did not, and what they said; it is never left out
 * @param owner who sees to it
 * @param due by when; absent when no day was set
 */
public record Decision(
        String format,
        String meetingId,
        String date,
        String release,
        String state,
        String caution,
        List<ForSegment> segments,
        List<String> agreed,
        List<Dissent> dissent,
        String owner,
        Optional<String> due) {
    /** The word it carries under {@code format}. */
    static final String FORMAT = "tunica-decision/1";

    private static final JsonMapper JSON = new JsonMapper();

    public Decision {
        segments = List.copyOf(segments);
        agreed = List.copyOf(agreed);
        dissent = List.copyOf(dissent);
    }

    /** What can be decided for a segment besides a technique. */
    public enum Course implements Word {
        /** The technique named. */
        TECHNIQUE,
        MEASURE_FIRST,
        REFER_ELSEWHERE,
        LEAVE_ALONE,
        /** As the reason says. */
        OTHER
    }

    /** Why something else than the first in rank. */
    public enum Why implements Word {
        FIRST_IN_RANK,
        RISK_WEIGHED_OTHERWISE,
        MEASUREMENT_DOUBTED,
        WISH_OF_THE_PATIENT,
        EXPERIENCE_OF_THE_TEAM,
        WHAT_THE_ROOM_HOLDS,
        OTHER_REASON
    }

    /**
     * The decision for one segment.
     *
     * @param ref its name in the case
     * @param shownAs its name in the packet
     * @param technique id of the technique; absent when the course is none
     * @param says the course or the technique in words
     * @param firstInRank what the advice had first, in words; empty when nothing was ranked
     * @param reason in words
     */
    public record ForSegment(
            String ref,
            String shownAs,
            Course course,
            Optional<String> technique,
            String says,
            String firstInRank,
            Why why,
            String reason) {}

    /** Somebody who did not agree. */
    public record Dissent(String who, String says) {}

    static Decision of(
            String meetingId, String date, Advice.Release release, List<ForSegment> segments, Parties parties) {
        return new Decision(
                FORMAT,
                meetingId,
                date,
                release.version() + " " + release.digest(),
                release.state().word(),
                Advice.CAUTION,
                segments,
                parties.agreed(),
                parties.dissent(),
                parties.owner(),
                parties.due());
    }

    /** Who took part in a decision. */
    record Parties(List<String> agreed, List<Dissent> dissent, String owner, Optional<String> due) {}

    String json() {
        return JSON.writeValueAsString(this);
    }

    /** Reads one back. */
    public static Decision read(String json) {
        return JSON.readValue(json, Decision.class);
    }
}
