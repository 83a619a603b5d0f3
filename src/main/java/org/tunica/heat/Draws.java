package org.tunica.heat;

import java.util.SplittableRandom;

/**
 * Evenly spread draws (Latin hypercube): every uncertain number gets one draw in each of n equal strips of probability,
 * in an order of its own. Same seed, same draws.
 *
 * <p>Distributions, our own choice: a range that spans more than a factor of three is drawn evenly in its logarithm, any
 * other as a triangle with its peak at the value. Measurement errors are normal, cut at two and a half deviations.
 */
final class Draws {
    private static final double WIDE = 3;
    private static final double CUT_DEVIATIONS = 2.5;

    private final int count;
    private final SplittableRandom random;

    Draws(int count, long seed) {
        this.count = count;
        this.random = new SplittableRandom(seed);
    }

    /** One draw per strip, shuffled; each in 0..1. */
    double[] even() {
        double[] drawn = new double[count];
        for (int i = 0; i < count; i++) {
            drawn[i] = (i + random.nextDouble()) / count;
            int j = random.nextInt(i + 1);
            double swapped = drawn[i];
            drawn[i] = drawn[j];
            drawn[j] = swapped;
        }
        return drawn;
    }

    /** Draws of a number with a range. */
    double[] within(double low, double value, double high) {
        double[] drawn = even();
        for (int i = 0; i < count; i++) {
            drawn[i] = low > 0 && high / low > WIDE
                    ? low * Math.pow(high / low, drawn[i])
                    : triangle(low, value, high, drawn[i]);
        }
        return drawn;
    }

    private static double triangle(double low, double peak, double high, double share) {
        double rising = (peak - low) / (high - low);
        return share < rising
                ? low + Math.sqrt(share * (high - low) * (peak - low))
                : high - Math.sqrt((1 - share) * (high - low) * (high - peak));
    }

    /** Standard normal deviates. */
    double[] normal() {
        double[] drawn = even();
        for (int i = 0; i < count; i++) {
            drawn[i] = Math.max(-CUT_DEVIATIONS, Math.min(CUT_DEVIATIONS, deviate(drawn[i])));
        }
        return drawn;
    }

    /** The normal deviate of a probability, by bisection on the error function. */
    private static double deviate(double probability) {
        double low = -6;
        double high = 6;
        while (high - low > 1e-9) {
            double middle = (low + high) / 2;
            if ((1 + AxialProfile.erf(middle / Math.sqrt(2))) / 2 < probability) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
