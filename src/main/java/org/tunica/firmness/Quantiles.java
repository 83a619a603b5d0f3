package org.tunica.firmness;

import java.util.Arrays;
import java.util.List;
import org.tunica.knowledge.PublishedRate;

/**
 * A spread of shares between 0 and 1, as its quantiles at even steps: drawing is one look-up. Where several sources give a
 * rate, each counts alike, so that their disagreement widens the spread. Immutable.
 */
final class Quantiles {
    /** Strips of the share axis over which densities are added up. */
    private static final int STRIPS = 2000;

    private static final int POINTS = 1024;

    private final double[] points;

    private Quantiles(double[] points) {
        this.points = points;
    }

    /** Nothing is published: anything from 0 to 1 is as likely. */
    static Quantiles open() {
        double[] density = new double[STRIPS];
        Arrays.fill(density, 1);
        return of(density);
    }

    /** The rates of several sources together. */
    static Quantiles of(List<PublishedRate> rates) {
        if (rates.isEmpty()) {
            return open();
        }
        double[] density = new double[STRIPS];
        rates.forEach(rate -> add(density(rate), density));
        return of(density);
    }

    private static double[] density(PublishedRate rate) {
        return rate.treated().isPresent()
                ? beta(
                        rate.share() * rate.treated().getAsDouble(),
                        (1 - rate.share()) * rate.treated().getAsDouble())
                : even(rate.low().orElseThrow(), rate.high().orElseThrow());
    }

    /** Beta(closed + 1, open + 1): what is known of a share after so many successes and failures, knowing nothing before. */
    static double[] beta(double closed, double open) {
        double[] density = new double[STRIPS];
        double peak = closed + open == 0 ? 0.5 : Math.min(1 - 1e-9, Math.max(1e-9, closed / (closed + open)));
        for (int i = 0; i < STRIPS; i++) {
            double share = middle(i);
            density[i] = StrictMath.exp(closed * (StrictMath.log(share) - StrictMath.log(peak))
                    + open * (StrictMath.log(1 - share) - StrictMath.log(1 - peak)));
        }
        return density;
    }

    private static double[] even(double low, double high) {
        double[] density = new double[STRIPS];
        for (int i = 0; i < STRIPS; i++) {
            density[i] = middle(i) >= low && middle(i) <= high ? 1 : 0;
        }
        return density;
    }

    private static double middle(int strip) {
        return (strip + 0.5) / STRIPS;
    }

    private static void add(double[] one, double[] sum) {
        double whole = Arrays.stream(one).sum();
        for (int i = 0; i < STRIPS; i++) {
            sum[i] += one[i] / whole;
        }
    }

    static Quantiles of(double[] density) {
        double whole = Arrays.stream(density).sum();
        double[] points = new double[POINTS];
        int strip = 0;
        double below = 0;
        for (int p = 0; p < POINTS; p++) {
            double wanted = (p + 0.5) / POINTS * whole;
            while (below + density[strip] < wanted) {
                below += density[strip++];
            }
            points[p] = (strip + (wanted - below) / density[strip]) / STRIPS;
        }
        return new Quantiles(points);
    }

    /** The share below which {@code probability} of the spread lies; 0 up to but not including 1. */
    double at(double probability) {
        return points[(int) (probability * POINTS)];
    }

    /** The mean share. */
    double mean() {
        return Arrays.stream(points).average().orElseThrow();
    }
}
