package org.tunica.invented;

import org.tunica.knowledge.Distribution;

/**
 * A bell with closed form, cut at both ends, of a number or of its logarithm. One rank between 0 and 1 gives one value, so a
 * rank tells at once how large the value is among all that could have been drawn.
 *
 * <pre>share up to x = 1 / (1 + exp(-(x - middle) / scale)),   scale = sd sqrt(3) / pi</pre>
 */
final class Curve {
    private final boolean ofLogarithm;
    private final double middle;
    private final double scale;
    private final double low;
    private final double high;
    private final double shareBelow;
    private final double shareWithin;

    private Curve(boolean ofLogarithm, double middle, double scale, double low, double high) {
        if (!(low < high)) {
            throw new IllegalArgumentException("low must be under high, got " + low + " and " + high);
        }
        this.ofLogarithm = ofLogarithm;
        this.middle = middle;
        this.scale = scale;
        this.low = low;
        this.high = high;
        this.shareBelow = share(low);
        this.shareWithin = share(high) - shareBelow;
    }

    static Curve of(Distribution distribution) {
        boolean ofLogarithm = distribution.shape() == Distribution.Shape.LOG_LOGISTIC;
        double middle = ofLogarithm ? StrictMath.log(distribution.number("median")) : distribution.number("mean");
        double sd = distribution.number(ofLogarithm ? "spread" : "sd");
        return new Curve(
                ofLogarithm,
                middle,
                sd * StrictMath.sqrt(3) / StrictMath.PI,
                distribution.number("low"),
                distribution.number("high"));
    }

    /** The same cut closer. */
    Curve within(double from, double to) {
        return new Curve(ofLogarithm, middle, scale, Math.max(low, from), Math.min(high, to));
    }

    /** The same moved up by a factor; only for a curve of a logarithm. */
    Curve times(double factor) {
        return new Curve(ofLogarithm, middle + StrictMath.log(factor), scale, low, high);
    }

    /** The value of a rank. */
    double at(double rank) {
        double share = shareBelow + rank * shareWithin;
        double value = middle + scale * StrictMath.log(share / (1 - share));
        double plain = ofLogarithm ? StrictMath.exp(value) : value;
        return Math.min(high, Math.max(low, plain));
    }

    double from(Draw draw) {
        return at(draw.fraction());
    }

    private double share(double value) {
        double plain = ofLogarithm ? StrictMath.log(value) : value;
        return 1 / (1 + StrictMath.exp((middle - plain) / scale));
    }
}
