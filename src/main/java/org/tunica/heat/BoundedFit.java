package org.tunica.heat;

import java.util.Arrays;
import java.util.function.UnaryOperator;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.ValueAndJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * Least squares over shares in 0..1 by Levenberg-Marquardt.
 *
 * <p>The optimiser moves u without bounds and share = (1 + sin u) / 2, so that a share reaches an end of its range and
 * never passes it. There the slope to u is 0, so a start keeps a little off the ends. Slopes to the shares are central
 * differences, one-sided at an end; the step is wide enough to look over the small jumps of a model on a grid.
 */
final class BoundedFit {
    private static final double OFF_THE_ENDS = 0.02;
    private static final int MOST_EVALUATIONS = 200;
    private static final int MOST_ITERATIONS = 60;

    private final UnaryOperator<double[]> residuals;
    private final int count;
    private final double stepShare;
    private final double tolerance;

    /**
     * The place where a fit ended.
     *
     * @param settled whether it came to rest there rather than ran out of steps
     */
    record Rest(double[] shares, double[] residuals, boolean settled) {
        double sumOfSquares() {
            return BoundedFit.sumOfSquares(residuals);
        }
    }

    /**
     * A problem.
     *
     * @param residuals of shares; always {@code count} of them
     * @param stepShare half the width of a difference
     * @param tolerance relative, of the sum of squares and of the shares
     */
    BoundedFit(UnaryOperator<double[]> residuals, int count, double stepShare, double tolerance) {
        this.residuals = residuals;
        this.count = count;
        this.stepShare = Checks.positive("stepShare", stepShare);
        this.tolerance = Checks.positive("tolerance", tolerance);
    }

    static double sumOfSquares(double[] residuals) {
        return Arrays.stream(residuals).map(r -> r * r).sum();
    }

    /** The fit from a start in 0..1. */
    Rest from(double[] start) {
        Model model = new Model();
        LeastSquaresProblem problem = new LeastSquaresBuilder()
                .start(Arrays.stream(start).map(BoundedFit::unbound).toArray())
                .target(new double[count])
                .model(model)
                .lazyEvaluation(true)
                .maxEvaluations(MOST_EVALUATIONS)
                .maxIterations(MOST_ITERATIONS)
                .build();
        boolean settled = true;
        try {
            new LevenbergMarquardtOptimizer()
                    .withCostRelativeTolerance(tolerance)
                    .withParameterRelativeTolerance(tolerance)
                    .withOrthoTolerance(tolerance)
                    .optimize(problem);
        } catch (MathIllegalStateException e) {
            settled = false; // out of steps; the best place seen stands, marked as such
        }
        return new Rest(model.bestShares, model.bestResiduals, settled);
    }

    /** Slopes of the residuals to the shares: one line a residual, one column a share. */
    double[][] slopes(double[] shares) {
        double[][] slopes = new double[count][shares.length];
        for (int j = 0; j < shares.length; j++) {
            double up = Math.min(1, shares[j] + stepShare);
            double down = Math.max(0, shares[j] - stepShare);
            double[] above = residuals.apply(with(shares, j, up));
            double[] below = residuals.apply(with(shares, j, down));
            for (int i = 0; i < count; i++) {
                slopes[i][j] = (above[i] - below[i]) / (up - down);
            }
        }
        return slopes;
    }

    private static double[] with(double[] shares, int j, double share) {
        double[] changed = shares.clone();
        changed[j] = share;
        return changed;
    }

    private static double unbound(double share) {
        double inside = Math.max(OFF_THE_ENDS, Math.min(1 - OFF_THE_ENDS, share));
        return Math.asin(2 * inside - 1);
    }

    private static double bound(double u) {
        return (1 + Math.sin(u)) / 2;
    }

    /** What the optimiser sees, and the best place it has looked at. */
    private final class Model implements ValueAndJacobianFunction {
        private double[] bestShares = new double[0];
        private double[] bestResiduals = {Double.MAX_VALUE};

        @Override
        public RealVector computeValue(double[] u) {
            double[] shares = Arrays.stream(u).map(BoundedFit::bound).toArray();
            double[] now = residuals.apply(shares);
            if (bestShares.length == 0 || sumOfSquares(now) < sumOfSquares(bestResiduals)) {
                bestShares = shares;
                bestResiduals = now;
            }
            return new ArrayRealVector(now, false);
        }

        @Override
        public RealMatrix computeJacobian(double[] u) {
            double[][] slopes = slopes(Arrays.stream(u).map(BoundedFit::bound).toArray());
            for (double[] line : slopes) {
                for (int j = 0; j < u.length; j++) {
                    line[j] *= Math.cos(u[j]) / 2;
                }
            }
            return new Array2DRowRealMatrix(slopes, false);
        }

        @Override
        public Pair<RealVector, RealMatrix> value(RealVector u) {
            return new Pair<>(computeValue(u.toArray()), computeJacobian(u.toArray()));
        }
    }
}
