package org.tunica.statistics;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * One simulated run without restarts. It remembers each new height of the chart and the case that reached it, so that the case of
 * the first signal can be told for every limit up to the highest asked, and is followed no further than that takes.
 */
final class InControlRun {
    private final WeightedMix mix;
    private final SplittableRandom random;
    private final int horizonCases;
    private double score;
    private int cases;
    private int records;
    private double[] heights = {0};
    private int[] reachedAt = {0};

    InControlRun(WeightedMix mix, int horizonCases, SplittableRandom random) {
        this.mix = mix;
        this.horizonCases = horizonCases;
        this.random = random;
    }

    /** The case that first reaches a limit greater than 0; one past the horizon when none does. */
    int signalledAt(double limit) {
        while (heights[records] < limit && cases < horizonCases) {
            next();
        }
        if (heights[records] < limit) {
            return horizonCases + 1;
        }
        int found = Arrays.binarySearch(heights, 0, records + 1, limit);
        return reachedAt[found >= 0 ? found : -found - 1];
    }

    private void next() {
        score = Math.max(0, score + mix.draw(random));
        cases++;
        if (score > heights[records]) {
            records++;
            if (records == heights.length) {
                heights = Arrays.copyOf(heights, 2 * records);
                reachedAt = Arrays.copyOf(reachedAt, 2 * records);
            }
            heights[records] = score;
            reachedAt[records] = cases;
        }
    }
}
