package org.tunica.outcomes;

import java.util.OptionalInt;

/**
 * How long a treated vein stayed closed. It counts as closed on the day of the procedure. A vein first seen open at a scan opened
 * at some time after the scan before (S-0960); it counts as open from the middle of that time, rounded up to a whole day: the day
 * of the scan would let the curve stay up too long, and the middle does best under a steady hazard (S-0961). One that was treated
 * again without having been seen open counts as open from that day.
 *
 * @param lastClosedDaysAfter the last scan that saw it closed before; 0 when none did
 * @param seenOpenDaysAfter the first visit at which it was open or treated again; absent while it was not
 * @param openDaysAfter the day from which it counts as open; absent likewise
 */
public record Staying(int lastClosedDaysAfter, OptionalInt seenOpenDaysAfter, OptionalInt openDaysAfter) {

    static Staying closedUntil(int lastClosed) {
        return new Staying(lastClosed, OptionalInt.empty(), OptionalInt.empty());
    }

    static Staying seenOpen(int lastClosed, int seenOpen) {
        int middle = lastClosed + (seenOpen - lastClosed + 1) / 2;
        return new Staying(lastClosed, OptionalInt.of(seenOpen), OptionalInt.of(middle));
    }

    static Staying treatedAgain(int lastClosed, int day) {
        return new Staying(lastClosed, OptionalInt.of(day), OptionalInt.of(day));
    }

    /** Whether it was open or treated again at any time. */
    public boolean failed() {
        return openDaysAfter.isPresent();
    }

    /** The day it counts as open, or else the day it was last seen closed. */
    public int daysAfter() {
        return openDaysAfter.orElse(lastClosedDaysAfter);
    }
}
