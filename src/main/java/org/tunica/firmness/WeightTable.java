package org.tunica.firmness;

/**
 * Drawn weights, one row a draw, each row with the sum 1. Rows are shared and must not be written to.
 */
record WeightTable(int criteria, double[][] rows) {
    int draws() {
        return rows.length;
    }
}
