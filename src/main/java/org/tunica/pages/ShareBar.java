package org.tunica.pages;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * What a session takes of one thing its segments share, against the most it may take.
 *
 * @param says what is shared
 * @param amount taken, with its unit
 * @param limit the most, with its unit; in words where none is set
 * @param taken share of the limit; absent without one
 * @param origin where the limit comes from and how it stands
 * @param warning empty where nothing needs one
 * @param notes help to the limit; none where none is set
 */
public record ShareBar(
        String says,
        String amount,
        String limit,
        OptionalDouble taken,
        String origin,
        String warning,
        List<NumberNote> notes) {
    private static final int WIDE = 240;
    private static final int LIMIT_AT = 200;
    private static final int HIGH = 18;

    /** How full, in words; the bar shows the same. */
    public String full() {
        if (taken.isEmpty()) {
            return "";
        }
        long percent = (long) Math.ceil(100 * taken.getAsDouble() - 1e-9);
        return percent + " % of the most" + (taken.getAsDouble() > 1 ? ": ABOVE IT" : "");
    }

    /** The bar as a drawing: the line is the limit, what passes it goes beyond the line and is hatched. */
    public String svg() {
        if (taken.isEmpty()) {
            return "";
        }
        double to = Math.min(WIDE - 1, LIMIT_AT * taken.getAsDouble());
        double within = Math.min(LIMIT_AT, to);
        StringBuilder svg = new StringBuilder(String.format(
                Locale.ROOT,
                "<svg class=\"bar\" viewBox=\"0 0 %d %d\" width=\"%d\" height=\"%d\" aria-hidden=\"true\">"
                        + "<rect x=\"0.5\" y=\"3.5\" width=\"%d\" height=\"11\" fill=\"none\" stroke=\"currentColor\"/>"
                        + "<rect x=\"0.5\" y=\"3.5\" width=\"%.1f\" height=\"11\" fill=\"currentColor\"/>",
                WIDE,
                HIGH,
                WIDE,
                HIGH,
                LIMIT_AT,
                within));
        for (double x = LIMIT_AT + 5; x < to; x += 5) {
            svg.append(String.format(
                    Locale.ROOT,
                    "<path d=\"M%.1f 14.5L%.1f 3.5\" stroke=\"currentColor\" stroke-width=\"2\"/>",
                    x - 4,
                    x));
        }
        return svg.append("<path d=\"M" + LIMIT_AT + ".5 0V" + HIGH
                        + "\" stroke=\"currentColor\" stroke-width=\"2\"/></svg>")
                .toString();
    }
}
