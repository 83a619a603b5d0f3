package org.tunica.similar;

import java.util.List;
import java.util.Optional;
import org.tunica.pastcases.PastCase;

/**
 * What the index holds of one past segment.
 *
 * @param caseId random id of its case
 * @param where its case stands in the case base
 * @param place of the segment among the treated ones of its case, from 0
 */
record Entry(
        String caseId,
        long where,
        int place,
        Profile profile,
        String technique,
        Optional<Boolean> closed,
        boolean invented,
        String site,
        List<String> notes) {

    /** Hexadecimal digits of an id that fit beside the place into one number. */
    private static final int DIGITS = 14;

    private static final int PLACE_BITS = 7;
    private static final int HEX = 16;
    private static final int BEFORE_DIGITS = 2;

    static Entry of(PastSegment past, long where, Profile profile) {
        PastCase pastCase = past.pastCase();
        return new Entry(
                pastCase.id(),
                where,
                past.place(),
                profile,
                past.treated().technique(),
                past.closed(),
                pastCase.invented(),
                pastCase.site(),
                pastCase.notes());
    }

    /** By what equally alike segments are put in order: the random id of the case, then the place in it. */
    long order() {
        return Long.parseLong(caseId.substring(BEFORE_DIGITS, BEFORE_DIGITS + DIGITS), HEX) << PLACE_BITS | place;
    }

    /** The case of a segment of this order, as a number. */
    static long caseNumber(long order) {
        return order >>> PLACE_BITS;
    }

    /** The place in its case of a segment of this order. */
    static int place(long order) {
        return (int) (order & (1 << PLACE_BITS) - 1);
    }
}
