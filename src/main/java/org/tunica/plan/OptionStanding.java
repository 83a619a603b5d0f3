package org.tunica.plan;

import org.tunica.casefile.Word;

/** How an option stands, best first. Only the first three are ranked. */
public enum OptionStanding implements Word {
    /** A first choice with no caution and no strong reason against. */
    PREFERRED,
    /** Nothing speaks for caution. */
    SUITABLE,
    /** At least one caution. */
    CAREFUL,
    /** Something it cannot do without, or that might exclude it, is not recorded. */
    MEASURE_FIRST,
    /** The room lacks the device or its drug. */
    NOT_IN_ROOM,
    /** A rule excludes it. */
    EXCLUDED;

    /** Whether the option takes part in the ranking. */
    public boolean ranked() {
        return compareTo(CAREFUL) <= 0;
    }
}
