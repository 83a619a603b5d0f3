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
import org.tunica.treatment.TreatedPlan;
import org.tunica.treatment.TreatedSegment;

/**
 * One treated segment of a past case.
 *
 * @param pastCase the case it belongs to
 * @param place of the segment among the treated ones of its case, from 0
 * @param delivered what was done to it
 * @param treated the same with the technique really used
 * @param course how it went; absent when it was not followed
 */
public record PastSegment(
        PastCase pastCase,
        int place,
        Limb limb,
        Segment segment,
        DeliveredSegment delivered,
        TreatedSegment treated,
        Optional<Course.SegmentCourse> course) {

    /** The treated segments of a past case with a technique on record, in the order of the case. */
    public static List<PastSegment> of(PastCase pastCase, Knowledge knowledge) {
        TreatedPlan plan = TreatedPlan.of(pastCase.caseFile(), pastCase.delivered(), knowledge);
        List<Course.SegmentCourse> courses = Course.of(plan, pastCase.followUp(), knowledge).stream()
                .flatMap(limb -> limb.segments().stream())
                .toList();
        List<PastSegment> all = new ArrayList<>();
        for (Limb limb : pastCase.caseFile().limbs()) {
            for (Segment segment : limb.segments()) {
                treated(plan, segment)
                        .ifPresent(treated -> all.add(new PastSegment(
                                pastCase,
                                all.size(),
                                limb,
                                segment,
                                delivered(pastCase, segment),
                                treated,
                                course(courses, segment))));
            }
        }
        return all;
    }

    private static Optional<TreatedSegment> treated(TreatedPlan plan, Segment segment) {
        return plan.segments().stream()
                .filter(one -> one.ref().equals(segment.ref()))
                .findFirst();
    }

    private static DeliveredSegment delivered(PastCase pastCase, Segment segment) {
        return pastCase.delivered().stream()
                .flatMap(session -> session.segments().stream())
                .filter(one -> one.ref().equals(segment.ref()))
                .filter(one -> one.notDone().isEmpty() && one.technique().isPresent())
                .findFirst()
                .orElseThrow();
    }

    private static Optional<Course.SegmentCourse> course(List<Course.SegmentCourse> courses, Segment segment) {
        return courses.stream()
                .filter(course -> course.treated().ref().equals(segment.ref()))
                .findFirst();
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
