package org.tunica.sheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;

/**
 * A rate as a count of people: 1.27 per cent is 13 of 1,000. The total is the smallest of 100, 1,000 and 10,000 in which
 * both those it happened to and those it did not are at least two, so that a rare thing is not told as one or none.
 *
 * @param count whole, the published rate rounded half up
 * @param outOf the total
 */
record NaturalFrequency(long count, long outOf) {
    private static final List<Long> TOTALS = List.of(100L, 1_000L, 10_000L);
    private static final long FEWEST = 2;
    private static final double ALL_PERCENT = 100;

    /** The frequency of a rate in per cent, 0 to 100. */
    static NaturalFrequency of(double percent) {
        if (!(percent >= 0 && percent <= ALL_PERCENT)) {
            throw new IllegalArgumentException("percent must be in 0..100, got " + percent);
        }
        if (percent == 0 || percent == ALL_PERCENT) {
            return outOf(percent, TOTALS.get(0));
        }
        return TOTALS.stream()
                .map(total -> outOf(percent, total))
                .filter(one -> one.count >= FEWEST && one.outOf - one.count >= FEWEST)
                .findFirst()
                .orElseGet(() -> outOf(percent, TOTALS.get(TOTALS.size() - 1)));
    }

    /** The frequency of a rate in a total of another one, so that both can be held side by side. */
    static NaturalFrequency outOf(double percent, long outOf) {
        long count = BigDecimal.valueOf(percent)
                .multiply(BigDecimal.valueOf(outOf))
                .divide(BigDecimal.valueOf((long) ALL_PERCENT))
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact();
        return new NaturalFrequency(count, outOf);
    }

    /** A whole number with a comma at the thousands. */
    static String grouped(long number) {
        return String.format(Locale.ROOT, "%,d", number);
    }
}
