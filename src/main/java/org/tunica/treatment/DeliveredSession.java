package org.tunica.treatment;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.Word;
import org.tunica.knowledge.Knowledge;

/**
 * What was really delivered in one session, as it was recorded: {@code tunica-delivered/1}. What is absent is unknown.
 * Immutable.
 *
 * @param format {@link #FORMAT}
 * @param caseRef the name of the case, as in the plan; no name of a person
 * @param session number of the session in the plan
 * @param date of the day, such as 2026-03-02
 * @param people who took part, by role and initials
 * @param indication why it was done
 * @param severityPoints clinical severity score before, total
 * @param consent whether consent was confirmed
 * @param timeOut whether the team stopped to check person, side and procedure
 * @param otherLidocaineMg lidocaine given outside the tumescence, such as at the puncture
 * @param otherAdrenaline whether that held adrenaline
 * @param totals as the team counted them
 * @param segments one entry for each segment, treated or not
 * @param aftercare what was arranged for the time after
 */
public record DeliveredSession(
        String format,
        String caseRef,
        OptionalInt session,
        Optional<String> date,
        Optional<List<Person>> people,
        Optional<String> indication,
        OptionalDouble severityPoints,
        Optional<Boolean> consent,
        Optional<Boolean> timeOut,
        OptionalDouble otherLidocaineMg,
        Optional<Boolean> otherAdrenaline,
        Totals totals,
        List<DeliveredSegment> segments,
        Aftercare aftercare) {

    /** The word a record of a delivery must carry under {@code format}. */
    public static final String FORMAT = "tunica-delivered/1";

    /** What initials look like. */
    public static final String INITIALS = "[A-Z\u00c0-\u00de]{1,4}";

    /** What a date looks like. */
    public static final String DATE = "[0-9]{4}-[0-9]{2}-[0-9]{2}";

    public DeliveredSession {
        people = people.map(List::copyOf);
        segments = List.copyOf(segments);
    }

    /**
     * Reads a record of a delivery in JSON.
     *
     * @param what the name of the input, for messages
     * @param bytes UTF-8 JSON
     * @throws org.tunica.casefile.FaultyInput with every fault and its JSON path
     */
    public static DeliveredSession read(String what, byte[] bytes, Knowledge knowledge) {
        return new DeliveredReader(knowledge).read(what, bytes);
    }

    /** Reads a record of a delivery that stands inside another file; its faults are noted with theirs. */
    public static DeliveredSession read(FieldReader reader, Knowledge knowledge) {
        return new DeliveredReader(knowledge).read(reader);
    }

    /** One who took part. */
    public record Person(Role role, String initials) {}

    /** What one did. */
    public enum Role implements Word {
        OPERATOR,
        ASSISTANT,
        NURSE,
        SONOGRAPHER,
        ANAESTHETIST,
        OTHER
    }

    /** Sums of the session as the team counted them; held against the segments. */
    public record Totals(
            OptionalDouble tumescentMl,
            OptionalDouble lidocaineMg,
            OptionalDouble polidocanolMg,
            OptionalDouble tetradecylMg,
            OptionalDouble foamMl,
            OptionalDouble adhesiveMl) {}

    /**
     * The time after.
     *
     * @param compression in words, such as "class II stocking, one week"
     * @param prophylaxis against thrombosis, in words
     * @param adviceGiven whether advice for the way home was given
     * @param followUp what is planned, in words
     */
    public record Aftercare(
            Optional<String> compression,
            Optional<String> prophylaxis,
            Optional<Boolean> adviceGiven,
            Optional<String> followUp) {}
}
