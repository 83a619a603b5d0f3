package org.tunica.heat;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * How surely the data fix the shares at the end of a fit, from the slopes J there.
 *
 * <p>Covariance = s2 (J'J)^-1 with s2 the sum of squares over the degrees of freedom, by the singular values of J with
 * every column brought to length 1. A direction whose singular value is less than a thousandth of the largest is left
 * out: nothing fixes it, and no share with a part in it has a standard error. The condition is the ratio of the largest to the
 * smallest singular value: 1 when every constant acts in a way of its own, above about 30 when they stand in for each
 * other (Belsley, Kuh, Welsch, Regression diagnostics, 1980; from memory, unverified).
 */
final class Sureness {
    private static final double NOTHING_FIXES = 1e-3;
    private static final double TAKES_PART = 0.3;
    private static final double LEAST_PART = 0.03;
    private static final double LEVEL = 0.975;

    private final double[][] slopes;
    private final int unknowns;
    private final double[] length;
    private final SingularValueDecomposition decomposition;
    private final double variance;
    private final double quantile;

    /**
     * The sureness of a fit.
     *
     * @param slopes of the residuals to the shares, see {@link BoundedFit#slopes}
     * @param variance of one residual
     * @param freedom degrees of freedom, 1 or more
     */
    Sureness(double[][] slopes, double variance, int freedom) {
        this.slopes = slopes;
        this.unknowns = slopes[0].length;
        this.variance = Checks.notNegative("variance", variance);
        this.quantile = new TDistribution(Checks.positive("freedom", freedom)).inverseCumulativeProbability(LEVEL);
        this.length = lengths();
        this.decomposition = new SingularValueDecomposition(new Array2DRowRealMatrix(unitColumns(), false));
    }

    private double[] lengths() {
        double[] lengths = new double[unknowns];
        for (int j = 0; j < unknowns; j++) {
            for (double[] line : slopes) {
                lengths[j] = Math.hypot(lengths[j], line[j]);
            }
        }
        return lengths;
    }

    private double[][] unitColumns() {
        double[][] unit = new double[slopes.length][unknowns];
        for (int i = 0; i < slopes.length; i++) {
            for (int j = 0; j < unknowns; j++) {
                unit[i][j] = length[j] == 0 ? 0 : slopes[i][j] / length[j];
            }
        }
        return unit;
    }

    /** Ratio of the largest to the smallest singular value; infinite when a direction is not fixed at all. */
    double condition() {
        double[] values = decomposition.getSingularValues();
        return values[unknowns - 1] == 0 ? Double.POSITIVE_INFINITY : values[0] / values[unknowns - 1];
    }

    /** Standard error of a share; infinite when nothing fixes it. */
    double standardError(int j) {
        return length[j] == 0 || unfixed(j, LEAST_PART)
                ? Double.POSITIVE_INFINITY
                : Math.sqrt(variance * covariance(j, j)) / length[j];
    }

    /** Half the width of the 95 % interval of a share. */
    double halfWidth(int j) {
        return quantile * standardError(j);
    }

    /** Correlation of two shares; not a number when nothing fixes one of them. */
    double correlation(int j, int k) {
        return Double.isInfinite(standardError(j)) || Double.isInfinite(standardError(k))
                ? Double.NaN
                : covariance(j, k) / Math.sqrt(covariance(j, j) * covariance(k, k));
    }

    /** Groups of two or more shares that only a direction nothing fixes tells apart. */
    List<List<Integer>> unfixedTogether() {
        List<List<Integer>> groups = new ArrayList<>();
        for (int d = 0; d < unknowns; d++) {
            List<Integer> members = new ArrayList<>();
            for (int j = 0; j < unknowns; j++) {
                if (!fixed(d) && length[j] > 0 && part(j, d) > TAKES_PART) {
                    members.add(j);
                }
            }
            if (members.size() > 1 && !groups.contains(members)) {
                groups.add(members);
            }
        }
        return groups;
    }

    private boolean unfixed(int j, double part) {
        for (int d = 0; d < unknowns; d++) {
            if (!fixed(d) && part(j, d) > part) {
                return true;
            }
        }
        return false;
    }

    private boolean fixed(int direction) {
        double[] values = decomposition.getSingularValues();
        return values[direction] > NOTHING_FIXES * values[0];
    }

    private double part(int j, int direction) {
        return Math.abs(decomposition.getV().getEntry(j, direction));
    }

    /** Of the columns of length 1, over the directions that are fixed. */
    private double covariance(int j, int k) {
        double sum = 0;
        for (int d = 0; d < unknowns; d++) {
            if (fixed(d)) {
                double value = decomposition.getSingularValues()[d];
                sum += decomposition.getV().getEntry(j, d)
                        * decomposition.getV().getEntry(k, d)
                        / (value * value);
            }
        }
        return sum;
    }
}
