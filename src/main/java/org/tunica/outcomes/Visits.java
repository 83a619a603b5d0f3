package org.tunica.outcomes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tunica.treatment.ClosureState;
import org.tunica.treatment.Complication;
import org.tunica.treatment.Course;

/** Sums up the visits of one segment. */
final class Visits {
    private static final Comparator<Complication> GRAVEST_LAST = Comparator.comparingInt(
                    (Complication one) -> one.grade().map(Enum::ordinal).orElse(-1))
            .thenComparingInt(one -> one.clavienDindo().map(Enum::ordinal).orElse(-1));

    private Visits() {}

    static List<Look> looks(List<Course.SeenAt> visits) {
        List<Look> looks = new ArrayList<>();
        boolean again = false;
        for (Course.SeenAt visit : visits) {
            again |= visit.treatedAgain();
            if (again || visit.state() != ClosureState.NOT_RECORDED) {
                looks.add(new Look(visit.daysAfter(), !again && visit.state() == ClosureState.CLOSED));
            }
        }
        return looks;
    }

    static Optional<Staying> staying(List<Course.SeenAt> visits) {
        int lastClosed = 0;
        boolean told = false;
        for (Course.SeenAt visit : visits) {
            boolean closed = visit.state() == ClosureState.CLOSED;
            if (!closed && visit.state() != ClosureState.NOT_RECORDED) {
                return Optional.of(Staying.seenOpen(lastClosed, visit.daysAfter()));
            }
            if (visit.treatedAgain()) {
                return Optional.of(Staying.treatedAgain(lastClosed, visit.daysAfter()));
            }
            lastClosed = closed ? visit.daysAfter() : lastClosed;
            told |= closed;
        }
        return told ? Optional.of(Staying.closedUntil(lastClosed)) : Optional.empty();
    }

    /** Each kind once, with the gravest grade it reached. */
    static Optional<List<Complication>> complications(List<Course.SeenAt> visits) {
        Map<Complication.Kind, Complication> worst = new EnumMap<>(Complication.Kind.class);
        boolean asked = false;
        for (Course.SeenAt visit : visits) {
            asked |= visit.complications().isPresent();
            visit.complications()
                    .orElse(List.of())
                    .forEach(one -> worst.merge(one.kind(), one, (a, b) -> GRAVEST_LAST.compare(a, b) >= 0 ? a : b));
        }
        return asked ? Optional.of(List.copyOf(worst.values())) : Optional.empty();
    }

    static Optional<DeepEnd> deepEnd(List<Course.SeenAt> visits, boolean looked) {
        return visits.stream()
                .flatMap(visit -> visit.clot().stream())
                .map(clot -> clot.thrombusClass().map(DeepEnd::of).orElse(DeepEnd.CLASS_NOT_TOLD))
                .max(Comparator.naturalOrder())
                .or(() -> looked ? Optional.of(DeepEnd.NO_CLOT) : Optional.empty());
    }
}
