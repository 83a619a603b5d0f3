package org.tunica.pastcases;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * Which past cases are asked for.
 *
 * @param technique only cases with a segment treated by it
 * @param year only cases of that year
 */
public record CaseFilter(Optional<String> technique, OptionalInt year) {
    /** All of them. */
    public static final CaseFilter ALL = new CaseFilter(Optional.empty(), OptionalInt.empty());

    /** Whether a case is asked for. */
    public boolean holds(PastCase one) {
        boolean ofYear = year.isEmpty() || year.equals(one.year());
        return ofYear && (technique.isEmpty() || treated(one));
    }

    private boolean treated(PastCase one) {
        return one.delivered().stream()
                .flatMap(session -> session.segments().stream())
                .anyMatch(segment -> segment.technique().equals(technique));
    }
}
