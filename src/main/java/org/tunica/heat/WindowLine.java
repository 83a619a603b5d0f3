package org.tunica.heat;

import java.util.Optional;

/** A line on a map of settings: settings on one side reach something, settings on the other side do not. */
public enum WindowLine {
    /** The whole wall dies at once or later. */
    DIES_LATER(true) {
        @Override
        double excess(HeatRun run, HeatLimits limits) {
            return run.delayedDepthMm() / run.wallMm() - 1;
        }
    },
    /** The whole wall dies at once. */
    DIES_AT_ONCE(true) {
        @Override
        double excess(HeatRun run, HeatLimits limits) {
            return run.killDepthPerWall() - 1;
        }
    },
    /** Charring starts. */
    CHAR(false) {
        @Override
        double excess(HeatRun run, HeatLimits limits) {
            return run.charIndex() - 1;
        }
    },
    /** The wall dries so far that perforation is feared. */
    PERFORATION(false) {
        @Override
        double excess(HeatRun run, HeatLimits limits) {
            return run.perforationIndex() - limits.mostPerforationIndex();
        }
    },
    /** The nerve is warmed past its red line. */
    NERVE(false) {
        @Override
        double excess(HeatRun run, HeatLimits limits) {
            return tooWarmK(run.nerve(), limits.nerve());
        }
    },
    /** The skin is warmed past its red line. */
    SKIN(false) {
        @Override
        double excess(HeatRun run, HeatLimits limits) {
            return tooWarmK(run.skin(), limits.skin());
        }
    };

    private final boolean wished;

    WindowLine(boolean wished) {
        this.wished = wished;
    }

    /** Whether it is wished; what is not wished is a harm. */
    public boolean wished() {
        return wished;
    }

    /** How far a run lies past the line; 0 or more when it has reached it. Not comparable between lines. */
    abstract double excess(HeatRun run, HeatLimits limits);

    /** Past the peak or the dose line, in K: above 43 C one degree doubles the dose, so its logarithm counts degrees. */
    private static double tooWarmK(Optional<WarmedPoint> point, HeatLimits.Warmth line) {
        return point.map(warmed ->
                        Math.max(warmed.peakC() - line.redPeakC(), log2(warmed.cem43Min() / line.redCem43Min())))
                .orElse(Double.NEGATIVE_INFINITY);
    }

    private static double log2(double value) {
        return Math.log(value) / Math.log(2);
    }
}
