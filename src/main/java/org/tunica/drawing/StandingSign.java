package org.tunica.drawing;

import org.tunica.plan.OptionStanding;

/** A sign for each standing, known by its shape; the word always stands beside it. */
public final class StandingSign {
    private StandingSign() {}

    /** The sign of a standing. */
    public static String of(OptionStanding standing) {
        return switch (standing) {
            case PREFERRED -> "\u25CF";
            case SUITABLE -> "\u25D0";
            case CAREFUL -> "\u25B3";
            case MEASURE_FIRST -> "\u25A1";
            case NOT_IN_ROOM -> "\u2212";
            case EXCLUDED -> "\u2715";
        };
    }
}
