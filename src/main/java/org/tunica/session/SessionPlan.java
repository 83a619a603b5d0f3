package org.tunica.session;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.KnownWords;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.casefile.Word;
import org.tunica.plan.Advice;
import org.tunica.plan.OptionStanding;
import org.tunica.plan.SettingsAdvice;

/**
 * A plan for every segment of a case, {@code tunica-plan/1}.
 *
 * @param caseFile the case it was made from, so that the plan stands alone
 * @param sessions in the order they are held
 * @param left segments that get nothing, and why
 * @param proved whether no better plan exists under these limits; false when the search stopped early
 * @param points of all choices together
 * @param fewerSessions what fewer sessions would cost
 * @param boundBy limits without which the plan would be better
 */
public record SessionPlan(
        String format,
        String caseRef,
        Advice.Release release,
        String caution,
        CaseFile caseFile,
        List<Session> sessions,
        List<Left> left,
        boolean proved,
        double points,
        List<Fewer> fewerSessions,
        List<Bound> boundBy) {

    /** The format of this record. */
    public static final String FORMAT = "tunica-plan/1";

    /**
     * Reads a plan written as JSON.
     *
     * @param what the name of the input, for messages
     * @param bytes UTF-8 JSON
     * @param known the words and ranges of the knowledge in use
     * @throws org.tunica.casefile.FaultyInput with every fault and its JSON path
     */
    public static SessionPlan read(String what, byte[] bytes, KnownWords known) {
        return new PlanReader(known).read(what, bytes);
    }

    /** The same plan, of which nobody vouches that its rules were signed. */
    public SessionPlan asDraft() {
        return new SessionPlan(
                format,
                caseRef,
                release.asDraft(),
                caution,
                caseFile,
                sessions,
                left,
                proved,
                points,
                fewerSessions,
                boundBy);
    }

    /**
     * One session.
     *
     * @param prepare what the room must have ready, in general words
     * @param overhead time beside the work on the segments
     * @param allMinutes of everything together; absent when the time of a step cannot be told
     */
    public record Session(
            int number,
            List<Step> steps,
            List<Total> totals,
            List<String> prepare,
            List<TimePart> overhead,
            OptionalDouble allMinutes) {}

    /**
     * One segment in the order of work.
     *
     * @param instead the first in rank, when the step takes another one for the sake of the session
     * @param because why it is done at this place
     */
    public record Step(
            int order,
            String ref,
            Limb.Side side,
            Segment.Vein vein,
            Segment.Level level,
            String technique,
            String says,
            OptionStanding standing,
            int rank,
            Optional<String> instead,
            Position position,
            SettingsAdvice settings,
            List<TimePart> time,
            List<String> because) {}

    /**
     * What a session takes of one share.
     *
     * @param limit the most; absent when none is set
     * @param limitId where the limit stands
     * @param warning when a line below the limit is passed
     */
    public record Total(
            Shared shared,
            String says,
            double amount,
            String unit,
            OptionalDouble limit,
            Optional<String> limitId,
            Optional<String> warning) {}

    /** A segment that gets nothing in this plan. */
    public record Left(String ref, Limb.Side side, Leaving leaving, String why) {}

    /** What becomes of a segment that is left. */
    public enum Leaving implements Word {
        /** No limit of the sessions has room for it. */
        LATER,
        /** Something must be measured before a technique can be chosen. */
        MEASURE_FIRST,
        /** No technique can be chosen here. */
        REFER
    }

    /** What holding fewer sessions would cost. */
    public record Fewer(int sessions, double points, List<String> changes) {}

    /**
     * A limit that bound.
     *
     * @param wouldTake what the plan without this limit would take in its fullest session
     * @param changes what would be done otherwise, segment by segment
     */
    public record Bound(
            Shared shared, String says, double limit, double wouldTake, String unit, List<String> changes) {}
}
