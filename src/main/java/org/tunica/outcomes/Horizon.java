package org.tunica.outcomes;

import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;

/**
 * A day after the procedure at which closure is counted.
 *
 * @param fromDaysAfter first day on which a scan counts for it
 * @param toDaysAfter last day
 */
public record Horizon(int daysAfter, int fromDaysAfter, int toDaysAfter) {

    /** A horizon of knowledge/: the day with its low and high. */
    static Horizon of(Knowledge knowledge, String id) {
        Quantity day = knowledge.quantity(id);
        return new Horizon((int) day.value(), (int) day.low().orElse(day.value()), (int)
                day.high().orElse(day.value()));
    }

    boolean holds(int day) {
        return day >= fromDaysAfter && day <= toDaysAfter;
    }

    /** How many days a scan lies away from it. */
    int away(int day) {
        return Math.abs(day - daysAfter);
    }
}
