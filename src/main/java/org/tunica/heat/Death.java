package org.tunica.heat;

/** What is expected of the whole wall at a setting. */
public enum Death {
    /** The whole wall dies at once. */
    AT_ONCE {
        @Override
        double depthPerWall(HeatRun run) {
            return run.killDepthPerWall();
        }

        @Override
        double probability(HeatSpread spread) {
            return spread.killProbability();
        }
    },
    /** The whole wall dies, part of it in the days that follow. */
    AT_ONCE_OR_LATER {
        @Override
        double depthPerWall(HeatRun run) {
            return run.delayedDepthMm() / run.wallMm();
        }

        @Override
        double probability(HeatSpread spread) {
            return spread.delayedProbability();
        }
    },
    /** Part of the wall stays alive, or that cannot be excluded with the wished probability. */
    NOT_THROUGH {
        @Override
        double depthPerWall(HeatRun run) {
            return AT_ONCE_OR_LATER.depthPerWall(run);
        }

        @Override
        double probability(HeatSpread spread) {
            return 1 - spread.delayedProbability();
        }
    };

    /** Depth of such death in walls. */
    abstract double depthPerWall(HeatRun run);

    /** Share of draws in which it comes so. */
    abstract double probability(HeatSpread spread);
}
