package org.tunica.review;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A stretch of the number line.
 *
 * @param low lower end, or minus infinity
 * @param lowIn whether the lower end belongs to it
 * @param high upper end, or infinity
 * @param highIn whether the upper end belongs to it
 */
record Span(double low, boolean lowIn, double high, boolean highIn) {
    private static final MathContext FEW_DIGITS = new MathContext(3);

    static Span point(double value) {
        return new Span(value, true, value, true);
    }

    static Span open(double low, double high) {
        return new Span(low, false, high, false);
    }

    boolean holds(double value) {
        return value > low && value < high || value == low && lowIn || value == high && highIn;
    }

    /** A number inside, well away from the ends and with few digits where there is room. */
    double sample() {
        double inside = inside();
        double rounded = new BigDecimal(inside).round(FEW_DIGITS).doubleValue();
        return rounded > low && rounded < high ? rounded : inside;
    }

    private double inside() {
        if (low == high) {
            return low;
        }
        if (Double.isInfinite(low)) {
            return Double.isInfinite(high) ? 0 : lower();
        }
        if (Double.isInfinite(high)) {
            return low > 0 ? 2 * low : low + 1;
        }
        return low + (high - low) / 2;
    }

    /** Nothing here is negative by nature, so half of an end rather than less than nothing. */
    private double lower() {
        return high > 0 ? high / 2 : high - 1;
    }

    /** This span and one that begins where it ends. */
    Span upTo(Span next) {
        return new Span(low, lowIn, next.high, next.highIn);
    }

    /** For example "from 5 mm up to 8 mm", "above 5 mm and below 8 mm". */
    String words(String unit) {
        if (low == high) {
            return "exactly " + Figures.with(low, unit);
        }
        if (Double.isInfinite(low)) {
            return Double.isInfinite(high) ? "any value" : to(unit);
        }
        return Double.isInfinite(high) ? from(unit) : from(unit) + (lowIn && highIn ? " " : " and ") + to(unit);
    }

    private String from(String unit) {
        return (lowIn ? "from " : "above ") + Figures.with(low, unit);
    }

    private String to(String unit) {
        return (highIn ? "up to " : "below ") + Figures.with(high, unit);
    }
}
