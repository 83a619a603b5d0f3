package org.tunica.treatment;

import java.util.List;
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
     * A plan and its follow-up put together.
     *
     * @param planName name of the plan, for messages
     * @param planJson a plan, {@code tunica-plan/1}
     * @param followUpName name of the follow-up, for messages
     * @param followUpJson a follow-up, {@code tunica-followup/1}
     * @throws org.tunica.casefile.FaultyInput with every fault of one of them, or of the two together
     */
    public static Treatment of(
            String planName, byte[] planJson, String followUpName, byte[] followUpJson, Knowledge knowledge) {
        TreatedReader.Read plan = new TreatedReader(knowledge).read(planName, planJson);
        FollowUp followUp = FollowUp.read(followUpName, followUpJson, knowledge);
        belongTogether(plan, followUp, followUpName);
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

    private static void belongTogether(TreatedReader.Read plan, FollowUp followUp, String what) {
        Faults faults = new Faults();
        if (!plan.caseRef().equals(followUp.caseRef())) {
            faults.add("$.caseRef", "the plan is of case \"" + plan.caseRef() + "\", this is of another");
        }
        for (FollowUp.FollowedLimb limb : followUp.limbs()) {
            for (FollowUp.TreatedLength treated : limb.treated()) {
                boolean planned = plan.segments().stream()
                        .anyMatch(segment -> segment.ref().equals(treated.ref()) && segment.side() == limb.side());
                if (!planned) {
                    faults.add(
                            "segment " + treated.ref(),
                            "the plan treats none of that name in the "
                                    + limb.side().word() + " leg");
                }
            }
        }
        faults.throwIfAny(what);
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
