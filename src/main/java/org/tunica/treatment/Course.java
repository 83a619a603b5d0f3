package org.tunica.treatment;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Word;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Statement;

/** The parts of a {@link Treatment}: how it went, leg by leg, segment by segment, visit by visit. */
public final class Course {
    private Course() {}

    /** Judges a follow-up of what was treated; segments that only one of the two names are passed over. */
    public static List<LimbCourse> of(TreatedPlan treated, FollowUp followUp, Knowledge knowledge) {
        return new CourseWriter(knowledge).limbs(treated.segments(), followUp);
    }

    /**
     * One leg.
     *
     * @param ceapBefore and {@code ceapLast}: class in the notation of CEAP 2020
     */
    public record LimbCourse(
            Limb.Side side,
            Optional<String> ceapBefore,
            Optional<String> ceapLast,
            SeverityChange severity,
            List<PainAt> pain,
            List<SegmentCourse> segments) {}

    /** Pain on a day after the procedure, 0 to 10. */
    public record PainAt(int daysAfter, int painOfTen) {}

    /**
     * Severity before and at the last visit that scored it. No drop is established as the one that matters, so the plain
     * change is told.
     *
     * @param before total, 0 to 30; absent when not every item is graded
     * @param after total at {@code daysAfter}; absent likewise
     * @param change points gained; a negative number is a relief
     * @param missing items that keep a total from being told, before and after
     */
    public record SeverityChange(
            OptionalInt before,
            OptionalInt daysAfter,
            OptionalInt after,
            OptionalInt change,
            List<ClinicalSeverityScore.Item> missingBefore,
            List<ClinicalSeverityScore.Item> missingAfter) {}

    /**
     * One segment.
     *
     * @param closure by which definition it counts as closed
     * @param next the scan that is due next
     */
    public record SegmentCourse(
            TreatedSegment treated,
            double treatedLengthCm,
            ClosureDefinition closure,
            List<SeenAt> visits,
            ScanPlan.Scan next) {}

    /**
     * A segment at one visit.
     *
     * @param reflux whether it refluxes for longer than counts
     */
    public record SeenAt(
            int daysAfter,
            ClosureState state,
            OptionalDouble openLengthCm,
            Reflux reflux,
            OptionalDouble refluxSeconds,
            Optional<ClotFound> clot,
            Optional<List<Complication>> complications,
            Optional<FollowUp.Again> again) {

        /** Whether something was done to it again. */
        public boolean treatedAgain() {
            return again.filter(done -> done != FollowUp.Again.NONE).isPresent();
        }
    }

    /** Whether a treated vein refluxes. */
    public enum Reflux implements Word {
        NOT_RECORDED,
        NONE_THAT_COUNTS,
        CAME_BACK
    }

    /**
     * A clot at the deep end.
     *
     * @param thrombusClass absent when its share of the deep lumen is not recorded
     * @param done what is customarily done about it
     * @param caution that the classes were not made for this technique
     */
    public record ClotFound(
            Optional<HeatInducedThrombusClass> thrombusClass,
            OptionalDouble deepLumenPercent,
            Statement done,
            Optional<Statement> caution) {}

    /**
     * How many segments were closed at their last scan, by one definition.
     *
     * @param closed of those scanned
     * @param treated how many were treated, scanned or not
     */
    public record ClosedShare(ClosureDefinition definition, Proportion closed, int treated) {}
}
