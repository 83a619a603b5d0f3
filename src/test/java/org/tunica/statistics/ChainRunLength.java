package org.tunica.statistics;

/**
 * The exact average run length of a chart with one constant risk, without simulation (Brook and Evans, Biometrika
 * 1972;59:539-549).
 *
 * <p>With odds ratio RA and p = (RA^(1/k) - 1) / (RA - 1) a success takes exactly one step of log(RA) / k down and a failure k - 1
 * steps up, so the chart walks over whole steps and its run length is the solution of linear equations: from step i, L(i) = 1 + (1 -
 * p) L(max(0, i - 1)) + p L(i + k - 1), where L is 0 at the limit and beyond. For RA less than 1 a failure goes down and a
 * success up.
 */
record ChainRunLength(double oddsRatio, int stepsPerLogOdds) {

    double failureProbability() {
        return (Math.pow(oddsRatio, 1.0 / stepsPerLogOdds) - 1) / (oddsRatio - 1);
    }

    double step() {
        return Math.abs(Math.log(oddsRatio)) / stepsPerLogOdds;
    }

    /** Mean cases from 0 until the chart stands at least so many steps high. */
    double meanCases(int limitSteps) {
        double[][] equations = new double[limitSteps][limitSteps + 1];
        for (int from = 0; from < limitSteps; from++) {
            equations[from][from] += 1;
            go(equations[from], from, moved(from, true), failureProbability());
            go(equations[from], from, moved(from, false), 1 - failureProbability());
            equations[from][limitSteps] = 1;
        }
        return solvedAtNought(equations);
    }

    /** Share of runs that stand so high within so many cases: the chances of every place, carried on case by case. */
    double signalledShare(int limitSteps, int cases) {
        double[] at = new double[limitSteps];
        at[0] = 1;
        for (int i = 0; i < cases; i++) {
            double[] next = new double[limitSteps];
            for (int from = 0; from < limitSteps; from++) {
                carry(next, moved(from, true), at[from] * failureProbability());
                carry(next, moved(from, false), at[from] * (1 - failureProbability()));
            }
            at = next;
        }
        double quiet = 0;
        for (double share : at) {
            quiet += share;
        }
        return 1 - quiet;
    }

    private int moved(int from, boolean failed) {
        boolean up = failed == oddsRatio > 1;
        // a failure at RA > 1 goes k - 1 up; a success at RA < 1 goes 1 up, a failure k - 1 down
        int steps = failed ? stepsPerLogOdds - 1 : 1;
        return Math.max(0, from + (up ? steps : -steps));
    }

    private static void go(double[] equation, int from, int to, double chance) {
        if (to < equation.length - 1) {
            equation[to] -= chance;
        }
    }

    private static void carry(double[] next, int to, double chance) {
        if (to < next.length) {
            next[to] += chance;
        }
    }

    /** Elimination with the largest pivot; the unknown wanted is the first. */
    private static double solvedAtNought(double[][] rows) {
        int size = rows.length;
        for (int column = 0; column < size; column++) {
            int best = column;
            for (int row = column; row < size; row++) {
                best = Math.abs(rows[row][column]) > Math.abs(rows[best][column]) ? row : best;
            }
            double[] swapped = rows[best];
            rows[best] = rows[column];
            rows[column] = swapped;
            for (int row = 0; row < size; row++) {
                if (row != column) {
                    double times = rows[row][column] / rows[column][column];
                    for (int i = column; i <= size; i++) {
                        rows[row][i] -= times * rows[column][i];
                    }
                }
            }
        }
        return rows[0][size] / rows[0][0];
    }
}
