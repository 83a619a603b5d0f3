package org.tunica.similar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Knowledge;
import org.tunica.pastcases.PastCase;
import org.tunica.treatment.ClosureState;
import org.tunica.treatment.Course;
import org.tunica.treatment.DeliveredSegment;
import org.tunica.treatment.TreatedSegment;
import org.tunica.treatment.Treatment;

/**
 * One treated segment of a past case.
 *
 * @param pastCase the case it belongs to
 * @param place of the segment among the treated ones of its case, from 0
 * @param delivered what was done to it first
 * @param course how it went; absent when its technique or its follow-up is not recorded
 */
public record PastSegment(
        PastCase pastCase,
        int place,
        Limb limb,
        Segment segment,
        DeliveredSegment delivered,
        Optional<Course.SegmentCourse> course) {

    /** The treated segments of a past case, in the order of the case; treated again counts as its course, not anew. */
    public static List<PastSegment> of(PastCase pastCase, Knowledge knowledge) {
        List<PastSegment> treated = new ArrayList<>();
        for (Limb limb : pastCase.caseFile().limbs()) {
            for (Segment segment : limb.segments()) {
                delivered(pastCase, segment)
                        .ifPresent(delivered -> treated.add(new PastSegment(
                                pastCase,
                                treated.size(),
                                limb,
                                segment,
                                delivered,
                                course(pastCase, limb, segment, delivered, knowledge))));
            }
        }
        return treated;
    }

    private static Optional<DeliveredSegment> delivered(PastCase pastCase, Segment segment) {
        return pastCase.delivered().stream()
                .flatMap(session -> session.segments().stream())
                .filter(one -> one.ref().equals(segment.ref()) && one.notDone().isEmpty())
                .findFirst();
    }

    private static Optional<Course.SegmentCourse> course(
            PastCase pastCase, Limb limb, Segment segment, DeliveredSegment delivered, Knowledge knowledge) {
        return delivered.technique().map(knowledge::technique).flatMap(technique -> {
            TreatedSegment treated = new TreatedSegment(
                    segment.ref(),
                    limb.side(),
                    segment.vein(),
                    segment.level(),
                    technique.id(),
                    technique.says(),
                    technique.family(),
                    delivered.treatedLengthCm());
            return Treatment.courses(List.of(treated), pastCase.followUp(), knowledge).stream()
                    .filter(followed -> followed.side() == limb.side())
                    .flatMap(followed -> followed.segments().stream())
                    .findFirst();
        });
    }

    /** The last look that tells whether it was closed. */
    public Optional<Course.SeenAt> lastScan() {
        return course.flatMap(went -> went.visits().stream()
                .filter(seen -> seen.state() != ClosureState.NOT_RECORDED)
                .reduce((earlier, later) -> later));
    }

    /** Whether it was closed at its last scan; nothing when no scan told. */
    public Optional<Boolean> closed() {
        return lastScan().map(seen -> seen.state() == ClosureState.CLOSED);
    }
}
