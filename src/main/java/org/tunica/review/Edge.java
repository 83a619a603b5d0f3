package org.tunica.review;

import java.util.ArrayList;
import java.util.List;
import org.tunica.knowledge.Quantity;
import org.tunica.rules.Condition;

/**
 * A number next to a limit, as near as a number can be.
 *
 * @param value in the unit of the limit
 * @param words for example "just below 5 mm"
 * @param inside whether the condition means this number, read from its words
 */
record Edge(double value, String words, boolean inside) {
    /** Just below, at and just above each limit of a comparison; none for a condition that compares nothing. */
    static List<Edge> of(Condition.OnOption condition) {
        if (condition instanceof Condition.Compared compared) {
            return of(compared);
        }
        return condition instanceof Condition.Between between ? of(between) : List.of();
    }

    private static List<Edge> of(Condition.Compared compared) {
        return switch (compared.comparison()) {
            case LESS -> around(compared.limit(), true, false, false);
            case AT_MOST -> around(compared.limit(), true, true, false);
            case MORE -> around(compared.limit(), false, false, true);
            case AT_LEAST -> around(compared.limit(), false, true, true);
        };
    }

    private static List<Edge> of(Condition.Between between) {
        boolean in = between.within();
        boolean room = between.low().value() < between.high().value();
        List<Edge> edges = new ArrayList<>(around(between.low(), !in, in, in == room));
        edges.addAll(around(between.high(), in == room, in, !in));
        return edges;
    }

    private static List<Edge> around(Quantity limit, boolean below, boolean at, boolean above) {
        String number = Figures.with(limit.value(), limit.unit());
        return List.of(
                new Edge(Math.nextDown(limit.value()), "just below " + number, below),
                new Edge(limit.value(), "exactly " + number, at),
                new Edge(Math.nextUp(limit.value()), "just above " + number, above));
    }

    /** The cell of a variable it lies in, or -1 when no such number may be entered. */
    int cell(Variable variable) {
        for (int i = 0; i < variable.cells().size(); i++) {
            boolean holds = variable.cells()
                    .get(i)
                    .span()
                    .filter(span -> span.holds(value))
                    .isPresent();
            if (holds) {
                return i;
            }
        }
        return -1;
    }
}
