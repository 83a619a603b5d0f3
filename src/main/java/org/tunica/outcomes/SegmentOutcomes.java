package org.tunica.outcomes;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.tunica.knowledge.Knowledge;
import org.tunica.pastcases.PastCase;
import org.tunica.treatment.Course;
import org.tunica.treatment.FollowUp;
import org.tunica.treatment.TreatedPlan;
import org.tunica.treatment.TreatedSegment;

/** Reads from past cases what became of each treated segment. Safe for several threads. */
public final class SegmentOutcomes {
    private final Knowledge knowledge;

    /** A reader with the definitions of a release. */
    public SegmentOutcomes(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    /** One outcome for each segment that was treated with a technique on record, followed or not. */
    public List<SegmentOutcome> of(PastCase pastCase) {
        TreatedPlan treated = TreatedPlan.of(pastCase.caseFile(), pastCase.delivered(), knowledge);
        Map<String, Course.SegmentCourse> courses = Course.of(treated, pastCase.followUp(), knowledge).stream()
                .flatMap(limb -> limb.segments().stream())
                .collect(Collectors.toMap(course -> course.treated().ref(), Function.identity(), (one, other) -> one));
        return treated.segments().stream()
                .map(segment -> outcome(pastCase, segment, Optional.ofNullable(courses.get(segment.ref()))))
                .toList();
    }

    /** The outcome of one segment; absent when it was not treated. */
    public Optional<SegmentOutcome> of(PastCase pastCase, String ref) {
        return of(pastCase).stream()
                .filter(outcome -> outcome.ref().equals(ref))
                .findFirst();
    }

    private static SegmentOutcome outcome(
            PastCase pastCase, TreatedSegment segment, Optional<Course.SegmentCourse> course) {
        List<Course.SeenAt> visits = course.map(Course.SegmentCourse::visits).orElse(List.of());
        return new SegmentOutcome(
                pastCase.id(),
                segment.ref(),
                pastCase.invented(),
                pastCase.site(),
                pastCase.year(),
                segment.vein(),
                segment.level(),
                segment.technique(),
                course.map(Course.SegmentCourse::closure),
                Visits.looks(visits),
                Visits.staying(visits),
                Visits.complications(visits),
                Visits.deepEnd(visits, looked(pastCase.followUp(), segment.ref())));
    }

    /** Whether any visit looked at the deep end, clot or none. */
    private static boolean looked(FollowUp followUp, String ref) {
        return followUp.limbs().stream()
                .flatMap(limb -> limb.visits().stream())
                .flatMap(visit -> visit.segments().stream().flatMap(List::stream))
                .anyMatch(seen -> seen.ref().equals(ref) && seen.clot().isPresent());
    }
}
