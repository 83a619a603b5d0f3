package org.tunica.heat;

/**
 * A constant the fit may move between the ends of its range. The fit sees its share of the range, 0 at the lower and 1 at
 * the upper end; over a range that spans more than a factor of three the share is that of the logarithm.
 *
 * @param value in knowledge/, in the unit stated there
 */
record FreeConstant(String id, double value, double low, double high) {
    private static final double WIDE = 3;

    FreeConstant {
        Checks.within("value of " + id, value, low, high);
        if (!(low < high)) {
            throw new IllegalArgumentException("range of " + id + " must not be empty, got " + low + ".." + high);
        }
    }

    private boolean wide() {
        return low > 0 && high / low > WIDE;
    }

    /** The share of the range at which the value of knowledge/ stands. */
    double share() {
        return wide() ? Math.log(value / low) / Math.log(high / low) : (value - low) / (high - low);
    }

    /** The value at a share; shares outside 0..1 go beyond the range. */
    double at(double share) {
        return wide() ? low * Math.pow(high / low, share) : low + (high - low) * share;
    }

    /** Change of the value for a small change of the share. */
    double perShare(double share) {
        return wide() ? at(share) * Math.log(high / low) : high - low;
    }
}
