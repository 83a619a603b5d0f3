package org.tunica.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tunica.picture.FunnelChart;
import org.tunica.picture.MadeUp;

class OutcomeTextTest {
    @Test
    void documentationExample_curves() {
        List<String> lines = lines(new SurvivalText(MadeUp.survival(), 60).text());
        int top = lines.indexOf("100 |**AAAAA");
        assertTrue(top > 0, lines::toString);
        assertTrue(lines.contains("day  0 30                     365                     730"), lines::toString);
        assertTrue(lines.contains("   A 10                       7                       3"), lines::toString);
        assertTrue(lines.contains("   B 10                       4                       ?"), lines::toString);
        // after day 300 eight cases of the fibre are free: 77.8 %, which lies in the row of 80 %
        String row = lines.get(top + 4);
        assertTrue(row.startsWith(" 80 |") && row.endsWith("AAAAAAAAAA"), row);
        assertTrue(lines.contains("A     365 7    77.8 % 36.5 to 93.9 %"), lines::toString);
    }

    @Test
    void highCurves_sayThatTheAxisIsCut() {
        String text = new SurvivalText(MadeUp.highSurvival(), 100).text();
        assertTrue(text.contains("The axis starts at 80 %."), text);
        assertTrue(lines(text).contains(" 80 |"), text);
    }

    /** By hand: failures at cases 11 and 12 reach 1.1956, the highest of seven rows; the limit of 1.1 rounds to the sixth. */
    @Test
    void results() {
        List<String> lines = lines(new CusumText(MadeUp.cusum(1.1, 11, 12, 20), 60).text());
        String failures =
                lines.stream().filter(line -> line.contains("|...")).findFirst().orElseThrow();
        assertEquals("   0 |..........ff.......f..........", failures);
        int middle = lines.indexOf(failures);
        assertEquals(" 1.2 |           W", lines.get(middle - 7));
        assertEquals(" 1.0 |-----------w------------------", lines.get(middle - 6));
        assertTrue(lines.get(middle - 1).contains("ww"), lines::toString);
        assertTrue(lines.get(middle + 7).startsWith("-1.1 |----"), lines::toString);
        assertTrue(String.join(" ", lines).contains("cases in order, 1 a column"));
    }

    @Test
    void moreCasesThanColumns_shareAColumn() {
        assertTrue(new CusumText(MadeUp.cusum(1.1, 11, 12), 20).text().contains("3 a\n"));
    }

    @Test
    void groups() {
        List<String> lines = lines(new FunnelText(MadeUp.funnel(FunnelChart.Kind.GROUPS), 60).text());
        String north = lineOf("north |", lines);
        String east = lineOf(" east |", lines);
        String south = lineOf("south |", lines);
        assertTrue(north.matches("north \\| *\\[ +\\( +o +\\) +\\]"), north);
        assertTrue(east.matches(" east \\| *\\[ +\\( +: +\\) *x +\\]"), east);
        assertTrue(south.matches("south \\| *\\[ *\\( *: *\\) *\\] *X"), south);
        assertTrue(lineOf("       0 %", lines).endsWith("20 %"), lines::toString);
        assertTrue(lines.contains("south 61 of 400 15.2 % 29 to 52 23 to 60 ABOVE 99.8 %"), lines::toString);
    }

    private static String lineOf(String start, List<String> lines) {
        return lines.stream().filter(line -> line.startsWith(start)).findFirst().orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(ints = {60, 100, 160})
    void noLineIsWiderThanAskedFor(int width) {
        Stream.of(
                        new SurvivalText(MadeUp.survival(), width).text(),
                        new SurvivalText(MadeUp.highSurvival(), width).text(),
                        new CusumText(MadeUp.cusum(1.1, 3, 4, 9, 10, 11), width).text(),
                        new FunnelText(MadeUp.funnel(FunnelChart.Kind.GROUPS), width).text(),
                        new FunnelText(MadeUp.funnel(FunnelChart.Kind.PERIODS), width).text())
                .flatMap(text -> lines(text).stream())
                .forEach(line -> assertTrue(line.length() <= width, line));
    }

    @Test
    void everyText_endsWithTheCaution() {
        Stream.of(
                        new SurvivalText(MadeUp.survival(), 160).text(),
                        new CusumText(MadeUp.cusum(4), 160).text(),
                        new FunnelText(MadeUp.funnel(FunnelChart.Kind.GROUPS), 160).text())
                .forEach(text -> assertTrue(
                        text.substring(text.indexOf("DRAFT knowledge 7")).contains("licensed specialist decides"),
                        text));
    }

    private static List<String> lines(String text) {
        return List.of(text.split("\n"));
    }
}
