package org.tunica.sheet;

import org.tunica.knowledge.PlainFigure;

/** Says what a study found in a sentence with a natural frequency; nothing is added to the published rate. */
final class FigureText {
    private FigureText() {}

    static String of(PlainFigure figure) {
        String later = figure.horizon().map(horizon -> " " + horizon).orElse("");
        if (figure.percent().isEmpty()) {
            return between(figure) + " " + figure.says() + later + ".";
        }
        NaturalFrequency frequency = NaturalFrequency.of(figure.percent().getAsDouble());
        String sentence = "In " + count(frequency) + " of " + NaturalFrequency.grouped(frequency.outOf()) + " "
                + figure.among().word() + " " + figure.says() + later + ".";
        return sentence + interval(figure, frequency.outOf());
    }

    private static String count(NaturalFrequency frequency) {
        return (frequency.count() == frequency.outOf() ? "all " : "about ")
                + NaturalFrequency.grouped(frequency.count());
    }

    /** Without a rate: the lowest and the highest the source gives. */
    private static String between(PlainFigure figure) {
        double high = figure.high().orElseThrow();
        long outOf = NaturalFrequency.of(high).outOf();
        long low = NaturalFrequency.outOf(figure.low().orElseThrow(), outOf).count();
        return "In " + (low == 0 ? "none" : NaturalFrequency.grouped(low)) + " to "
                + NaturalFrequency.grouped(NaturalFrequency.outOf(high, outOf).count()) + " of "
                + NaturalFrequency.grouped(outOf) + " " + figure.among().word();
    }

    private static String interval(PlainFigure figure, long outOf) {
        if (figure.low().isEmpty()) {
            return "";
        }
        return " (It may be "
                + NaturalFrequency.grouped(NaturalFrequency.outOf(figure.low().getAsDouble(), outOf)
                        .count())
                + " to "
                + NaturalFrequency.grouped(NaturalFrequency.outOf(figure.high().getAsDouble(), outOf)
                        .count())
                + ".)";
    }
}
