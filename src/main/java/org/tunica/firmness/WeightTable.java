package org.tunica.firmness;

/**
 * Drawn weights, one row a draw, each row with the sum 1. Rows are shared and must not be written to.
 */
record WeightTable(int criteria, double[][] rows) {
    int draws() {
        return rows.length;
    }

    /** The mean weight of each criterion. */
    double[] means() {
        double[] means = new double[criteria];
        for (double[] row : rows) {
            for (int j = 0; j < criteria; j++) {
                means[j] += row[j] / rows.length;
            }
        }
        return means;
    }
}
