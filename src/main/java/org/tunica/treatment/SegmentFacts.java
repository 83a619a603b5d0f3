package org.tunica.treatment;

import java.util.Optional;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.session.SessionPlan;

/**
 * A delivered segment with what is known of it before.
 *
 * @param limb the leg it lies in
 * @param mapped as the scan saw it
 * @param planned the step of this session's plan; absent when it was not planned for this session
 */
record SegmentFacts(DeliveredSegment delivered, Limb limb, Segment mapped, Optional<SessionPlan.Step> planned) {

    static Optional<SegmentFacts> of(CaseFile caseFile, SessionPlan.Session session, DeliveredSegment delivered) {
        for (Limb limb : caseFile.limbs()) {
            for (Segment segment : limb.segments()) {
                if (segment.ref().equals(delivered.ref())) {
                    return Optional.of(new SegmentFacts(
                            delivered,
                            limb,
                            segment,
                            session.steps().stream()
                                    .filter(step -> step.ref().equals(delivered.ref()))
                                    .findFirst()));
                }
            }
        }
        return Optional.empty();
    }

    String name() {
        return mapped.ref() + ", " + Says.side(limb.side()) + " " + Says.word(mapped.vein()) + ", "
                + Says.word(mapped.level());
    }
}
