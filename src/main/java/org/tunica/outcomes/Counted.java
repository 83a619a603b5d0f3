package org.tunica.outcomes;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.tunica.statistics.WilsonInterval;

/**
 * How many of a group, unless that is too few to tell.
 *
 * @param events how many; absent when hidden
 * @param total of how many; absent when the group itself is hidden
 * @param lowShare lower limit of the share by Wilson's score method (S-0963); absent without anybody
 * @param highShare upper limit
 * @param fewerThan present when what is hidden has fewer than so many past cases; what is hidden for the sake of another group has
 *     none
 */
public record Counted(
        OptionalInt events,
        OptionalInt total,
        OptionalDouble lowShare,
        OptionalDouble highShare,
        OptionalInt fewerThan) {

    /** A count that may be told. */
    static Counted told(int events, int total, double confidenceShare) {
        if (total == 0) {
            return new Counted(
                    OptionalInt.of(0),
                    OptionalInt.of(0),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalInt.empty());
        }
        WilsonInterval limits = WilsonInterval.of(events, total, confidenceShare);
        return new Counted(
                OptionalInt.of(events),
                OptionalInt.of(total),
                OptionalDouble.of(limits.lowShare()),
                OptionalDouble.of(limits.highShare()),
                OptionalInt.empty());
    }

    /** Of a group that is too small. */
    static Counted fewerThan(int k) {
        return hidden(OptionalInt.empty(), OptionalInt.of(k));
    }

    /** Too few of a group that may be told of. */
    static Counted fewerThan(int k, int total) {
        return hidden(OptionalInt.of(total), OptionalInt.of(k));
    }

    /** Of a group that would tell the size of another. */
    static Counted withheld() {
        return hidden(OptionalInt.empty(), OptionalInt.empty());
    }

    private static Counted hidden(OptionalInt total, OptionalInt fewerThan) {
        return new Counted(OptionalInt.empty(), total, OptionalDouble.empty(), OptionalDouble.empty(), fewerThan);
    }

    /** The share itself; absent when hidden or without anybody. */
    public OptionalDouble share() {
        return lowShare.isPresent()
                ? OptionalDouble.of((double) events.orElseThrow() / total.orElseThrow())
                : OptionalDouble.empty();
    }
}
