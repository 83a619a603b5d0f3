package org.tunica.heat;

/** Equal steps while the source acts, then growing ones until the slice has cooled for a while. */
final class TimeSteps {
    private static final double AFTER_S = 150;
    private static final double GROWTH = 0.06;
    private static final double LONGEST_S = 1.5;

    private final int onSteps;
    private final double endS;
    private final double growth;
    private final double longestS;
    private double nextS;
    private double reachedS;
    private int done;

    TimeSteps(HeatSupply supply, double stepFactor) {
        onSteps = Math.max(1, (int) Math.round(supply.steps() / stepFactor));
        nextS = supply.durationS() / onSteps;
        endS = supply.durationS() + AFTER_S;
        growth = 1 + GROWTH * stepFactor;
        longestS = LONGEST_S * stepFactor;
    }

    boolean more() {
        return reachedS < endS - 1e-9;
    }

    boolean sourceOn() {
        return done < onSteps;
    }

    /** Length of the coming step, s. */
    double lengthS() {
        if (!sourceOn()) {
            nextS = Math.min(nextS * growth, longestS);
        }
        return Math.min(nextS, endS - reachedS);
    }

    double reachedS() {
        return reachedS;
    }

    void advance(double stepS) {
        reachedS += stepS;
        done++;
    }
}
