package org.tunica.treatment;

import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Faults;
import org.tunica.knowledge.Knowledge;
import org.tunica.plan.Advice;

/**
 * What was done and how it went, {@code tunica-treatment/1}. It tells, in the words of the trade and of trials; it advises
 * nothing.
 *
 * @param limbs each leg followed
 * @param closed by each definition used, with its denominator
 * @param notFollowed segments of the plan the follow-up does not hold
 */
public record Treatment(
        String format,
        String caseRef,
        String caution,
        List<Course.LimbCourse> limbs,
        List<Course.ClosedShare> closed,
        List<TreatedSegment> notFollowed) {

    /** The format of this record. */
    public static final String FORMAT = "tunica-treatment/1";

    public Treatment {
        limbs = List.copyOf(limbs);
        closed = List.copyOf(closed);
        notFollowed = List.copyOf(notFollowed);
    }

    /**
     * A plan, what was delivered of it and its follow-up put together.
     *
     * @param planned a plan
     * @param delivered records of its sessions; without any, what was planned counts as done
     * @throws org.tunica.casefile.FaultyInput with every way in which they do not belong together
     */
    public static Treatment of(
            TreatedPlan planned, List<DeliveredSession> delivered, FollowUp followUp, Knowledge knowledge) {
        TreatedPlan plan = planned.with(delivered, knowledge);
        belongTogether(plan, followUp);
        List<Course.LimbCourse> limbs = new CourseWriter(knowledge).limbs(plan.segments(), followUp);
        return new Treatment(
                FORMAT,
                followUp.caseRef(),
                Advice.CAUTION,
                limbs,
                CourseWriter.closed(limbs),
                plan.segments().stream()
                        .filter(segment -> !followed(segment, followUp))
                        .toList());
    }

    private static boolean followed(TreatedSegment segment, FollowUp followUp) {
        return followUp.limbs().stream()
                .flatMap(limb -> limb.treated().stream())
                .anyMatch(treated -> treated.ref().equals(segment.ref()));
    }

    private static void belongTogether(TreatedPlan plan, FollowUp followUp) {
        Faults faults = new Faults();
        if (!plan.caseRef().equals(followUp.caseRef())) {
            faults.add("$.caseRef", "the plan is of case \"" + plan.caseRef() + "\", this is of another");
        }
        followUp.limbs().forEach(limb -> limb.treated().forEach(treated -> treated(plan, limb, treated, faults)));
        faults.throwIfAny("follow-up");
    }

    private static void treated(
            TreatedPlan plan, FollowUp.FollowedLimb limb, FollowUp.TreatedLength treated, Faults faults) {
        String place = "segment " + treated.ref();
        Optional<TreatedSegment> found = plan.segments().stream()
                .filter(segment -> segment.ref().equals(treated.ref()) && segment.side() == limb.side())
                .findFirst();
        if (found.isEmpty()) {
            faults.add(
                    place,
                    (plan.delivered() ? "what was delivered" : "the plan") + " treats none of that name in the "
                            + limb.side().word() + " leg");
        }
        found.map(TreatedSegment::deliveredLengthCm)
                .filter(length -> length.isPresent() && length.getAsDouble() != treated.treatedLengthCm())
                .ifPresent(length -> faults.add(
                        place,
                        "the record of the delivery says " + Plain.number(length.getAsDouble())
                                + " cm were treated, this says " + Plain.number(treated.treatedLengthCm())));
    }

    /** Every sentence and number of knowledge/ it needs, so that a release without one is refused at the start. */
    public static void check(Knowledge knowledge) {
        CourseWriter.STATEMENTS.forEach(knowledge::afterCare);
        Faults faults = new Faults();
        FollowUp.NUMBERS.stream()
                .filter(path -> knowledge.plausibleRange(path).isEmpty())
                .forEach(path -> faults.add("knowledge/measurements.yaml: " + path, "must be given"));
        knowledge.measurements().keySet().stream()
                .filter(path -> path.startsWith(Knowledge.FOLLOW_UP) && !FollowUp.NUMBERS.contains(path))
                .forEach(path -> faults.add("knowledge/measurements.yaml: " + path, "is no number of a follow-up"));
        knowledge.afterCare().keySet().stream()
                .filter(id -> !CourseWriter.STATEMENTS.contains(id))
                .forEach(id -> faults.add("knowledge/after-care.yaml: " + id, "is a sentence the program never says"));
        faults.throwIfAny("knowledge");
    }
}
