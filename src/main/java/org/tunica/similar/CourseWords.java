package org.tunica.similar;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tunica.casefile.Word;
import org.tunica.treatment.Course;
import org.tunica.treatment.FollowUp;

/** How it went with a past segment, in one line: closed or not, what went wrong, whether it was treated again. */
final class CourseWords {
    private CourseWords() {}

    static String of(PastSegment past) {
        if (past.course().isEmpty() || past.course().get().visits().isEmpty()) {
            return "not followed";
        }
        List<Course.SeenAt> visits = past.course().get().visits();
        List<String> parts = new ArrayList<>();
        parts.add(past.lastScan()
                .map(seen -> words(seen.state()) + " on day " + seen.daysAfter())
                .orElse("no scan told whether it was closed"));
        parts.add(troubles(visits));
        again(visits).ifPresent(parts::add);
        return String.join("; ", parts);
    }

    private static String troubles(List<Course.SeenAt> visits) {
        Set<String> kinds = new LinkedHashSet<>();
        boolean asked = false;
        for (Course.SeenAt seen : visits) {
            asked |= seen.complications().isPresent();
            seen.complications().orElse(List.of()).forEach(one -> kinds.add(words(one.kind())));
            seen.clot()
                    .ifPresent(clot -> kinds.add("clot towards the deep vein, class "
                            + clot.thrombusClass().map(Enum::name).orElse("not known")));
        }
        if (kinds.isEmpty()) {
            return asked ? "no complication" : "complications not recorded";
        }
        return String.join(", ", kinds);
    }

    private static Optional<String> again(List<Course.SeenAt> visits) {
        return visits.stream()
                .filter(seen ->
                        seen.again().filter(done -> done != FollowUp.Again.NONE).isPresent())
                .findFirst()
                .map(seen -> "treated again on day " + seen.daysAfter() + " with "
                        + words(seen.again().orElseThrow()));
    }

    private static String words(Word word) {
        return word.word().replace('-', ' ');
    }
}
