package org.tunica.outcomes;

import java.util.List;
import java.util.Optional;
import org.tunica.statistics.Funnel;

/**
 * One technique split by site or by year.
 *
 * @param rows in order of name
 * @param funnel failures at one year of the rows that may be told, against the share of all rows together; absent with fewer than
 *     two such rows
 */
public record Split(List<Row> rows, Optional<Funnel> funnel) {
    public Split {
        rows = List.copyOf(rows);
    }

    /** One site or year. */
    public record Row(String name, List<ClosedAt> closed) {
        public Row {
            closed = List.copyOf(closed);
        }
    }
}
