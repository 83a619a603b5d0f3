package org.tunica.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Evidence;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.PlainFigure;
import org.tunica.knowledge.Source;
import org.tunica.knowledge.Standing;

/** Every frequency told is the published rate rounded, and the rate stands in the row of the evidence it names. */
class FiguresTest {
    private static final Knowledge KNOWLEDGE = Knowledge.of(Bundle.shipped());
    private static final Pattern TOLD = Pattern.compile("In (?:about|all) ([\\d,]+) of ([\\d,]+) ");
    private static final Pattern COUNTED = Pattern.compile("(\\d+) of (\\d[\\d ]*\\d)");

    static Collection<PlainFigure> figures() {
        return KNOWLEDGE.plain().figures().values();
    }

    @ParameterizedTest
    @CsvSource({
        "91.304, 91, 100",
        "1.27, 13, 1000",
        "0.28, 3, 1000",
        "0.11, 11, 10000",
        "0.8966, 9, 1000",
        "99.6, 996, 1000",
        "100, 100, 100",
        "0, 0, 100",
        "2, 2, 100",
        "1.5, 2, 100",
        "1.49, 15, 1000",
        "0.001, 0, 10000"
    })
    void aRateAsACount(double percent, long count, long outOf) {
        assertEquals(new NaturalFrequency(count, outOf), NaturalFrequency.of(percent));
    }

    @Property(seed = "20260101")
    void aCountIsTheRateRounded(@ForAll @DoubleRange(min = 0, max = 100) double percent) {
        NaturalFrequency frequency = NaturalFrequency.of(percent);
        assertEquals(percent * frequency.outOf() / 100, frequency.count(), 0.5 + 1e-9);
    }

    @Test
    void noRateIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> NaturalFrequency.of(100.1));
        assertThrows(IllegalArgumentException.class, () -> NaturalFrequency.of(Double.NaN));
    }

    @ParameterizedTest
    @MethodSource("figures")
    void whatIsToldIsThePublishedRateRounded(PlainFigure figure) {
        Matcher told = TOLD.matcher(FigureText.of(figure));
        if (figure.percent().isEmpty()) {
            assertTrue(FigureText.of(figure).matches("In (none|\\d+) to \\d+ of [\\d,]+ .*"), FigureText.of(figure));
            return;
        }
        assertTrue(told.find(), FigureText.of(figure));
        double count = Double.parseDouble(told.group(1).replace(",", ""));
        double outOf = Double.parseDouble(told.group(2).replace(",", ""));
        assertEquals(figure.percent().getAsDouble() * outOf / 100, count, 0.5);
    }

    @ParameterizedTest
    @MethodSource("figures")
    void theRateStandsInItsRowOfTheEvidence(PlainFigure figure) {
        Evidence row = KNOWLEDGE.evidence().get(figure.row());
        Matcher counted = COUNTED.matcher(figure.definition());
        if (counted.find()) {
            double events = Double.parseDouble(counted.group(1));
            double of = Double.parseDouble(counted.group(2).replace(" ", ""));
            assertEquals(100 * events / of, figure.percent().orElseThrow(), 1e-9);
            assertTrue(holds(row, counted.group(1)) && holds(row, counted.group(2)), () -> figure + " in " + row);
            return;
        }
        Stream.of(figure.percent(), figure.low(), figure.high())
                .flatMapToDouble(OptionalDouble::stream)
                .forEach(number -> assertTrue(holds(row, plain(number)), () -> number + " in " + row));
    }

    @ParameterizedTest
    @MethodSource("figures")
    void whatWasNeverReadIsUnverified(PlainFigure figure) {
        Source.Read read = KNOWLEDGE.source(figure.source()).read();
        boolean unread = List.of(Source.Read.NONE, Source.Read.MEMORY).contains(read);
        assertEquals(unread, figure.standing() == Standing.UNVERIFIED, () -> figure + " read " + read);
    }

    /** As a number of its own; a trailing nought does not matter. */
    private static boolean holds(Evidence row, String number) {
        return Pattern.compile("(?<![\\d.])" + Pattern.quote(number) + "(\\.0+)?(?![\\d]|\\.\\d)")
                .matcher(row.says())
                .find();
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }
}
