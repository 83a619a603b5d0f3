package org.tunica.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tunica.statistics.CusumDesign;
import org.tunica.statistics.CusumSide;
import org.tunica.statistics.Funnel;
import org.tunica.statistics.OutcomeCusum;

class OutcomePictureTest {
    @Test
    void documentationExample_curvesAsSvg() throws Exception {
        String says = Drawn.words(OutcomePicture.of(MadeUp.survival(), 1000).svg());
        for (String label : List.of(
                "Share still closed",
                "Invented cases <of> nobody & nowhere.",
                "days after treatment",
                "still closed, %",
                "A radial fibre",
                "B foam",
                "at risk:",
                "365",
                "Log-rank test of A against B",
                "Tint: limits",
                "DRAFT knowledge 7",
                "licensed specialist decides")) {
            assertTrue(says.contains(label), label + " in\n" + says);
        }
    }

    /** Letter and numbers of each group at days 0, 30, 365 and 730; the foam is not known at the last. */
    @Test
    void numbersAtRiskStandBeneathTheCurves() throws Exception {
        String says = Drawn.words(OutcomePicture.of(MadeUp.survival(), 1000).svg());
        assertTrue(says.contains("at risk:\nA\n10\n10\n7\n3\nB\n10\n10\n4\n?\n"), says);
    }

    /** By hand: of ten one fails on day 100 with nine still followed, one on day 300 with eight: 8/9 x 7/8 = 7/9. */
    @Test
    void tableReadsTheCurvesAtTheDaysAsked() {
        ChartWords words = MadeUp.survival().words();
        assertEquals(6, words.rows().size());
        assertEquals(
                List.of("A", "30", "10", "100 %", "none: no event yet"),
                words.rows().get(0));
        assertEquals(List.of("A", "365", "7", "77.8 %"), words.rows().get(1).subList(0, 4));
        assertEquals(
                List.of("B", "730", "?", "?", "too few followed so long"),
                words.rows().get(5));
        assertTrue(words.notes().get(1).startsWith("A: 2 events; more than half"), words.notes()::toString);
        assertTrue(words.notes().get(2).startsWith("B: 6 events; half were no longer closed by day 300"));
    }

    @Test
    void highCurves_cutTheAxisAndSaySo() throws Exception {
        assertEquals(0, MadeUp.survival().axisFromPercent());
        assertEquals(80, MadeUp.highSurvival().axisFromPercent());
        String says = Drawn.words(OutcomePicture.of(MadeUp.highSurvival(), 1000).svg());
        assertTrue(says.contains("(the axis starts at 80 %)"), says);
    }

    @Test
    void moreGroupsThanLines_areRefused() {
        SurvivalChart.Group group = MadeUp.survival().groups().get(0);
        for (int count : new int[] {0, 5}) {
            assertThrows(
                    IllegalArgumentException.class,
                    () -> new SurvivalChart(
                            MadeUp.cusum(4).head(),
                            "closed",
                            Collections.nCopies(count, group),
                            List.of(),
                            Optional.empty()));
        }
    }

    /** By hand: log(2 / 1.1) = 0.5978 a failure, so the second of two in a row reaches 1.1. */
    @Test
    void signals_standInPictureTableAndNotes() throws Exception {
        CusumChart chart = MadeUp.cusum(1.1, 11, 12, 20);
        String says = Drawn.words(OutcomePicture.of(chart, 1000).svg());
        for (String label : List.of(
                "case 12, since 11",
                "limit 1.1: worse than predicted",
                "limit -1.1: better than predicted",
                "Small strokes at the foot: failures.")) {
            assertTrue(says.contains(label), label + " in\n" + says);
        }
        ChartWords words = chart.words();
        assertEquals(
                "Case 12: WORSE than predicted, most likely since about case 11 (2 failures in 2 cases, 0.2 predicted).",
                words.notes().get(0));
        assertEquals(
                "3 failures in 30 cases, 3 predicted.", words.notes().get(1).substring("In all ".length()));
        assertEquals(10, words.rows().size());
        assertEquals(List.of("10 to 12", "2", "0.3", "1.2"), words.rows().get(3).subList(0, 4));
        assertEquals("worse at 12", words.rows().get(3).get(5));
    }

    @Test
    void noSignal_isSaid() {
        assertEquals("No signal.", MadeUp.cusum(4, 10, 20, 30).words().notes().get(0));
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void groupsAndPeriods_standWithNamesAndTarget(FunnelChart.Kind kind) throws Exception {
        FunnelChart chart = MadeUp.funnel(kind);
        String says = Drawn.words(OutcomePicture.of(chart, 1000).svg());
        for (String label : List.of("north", "east", "south", "west", "target 10 %", "Diamond: outside 99.8 %.")) {
            assertTrue(says.contains(label), label + " in\n" + says);
        }
        // limits of FunnelTest, where they are held against another program
        assertEquals(
                List.of("east", "17 of 100", "17 %", "5 to 16", "2 to 20", "above 95 %"),
                chart.words().rows().get(1));
        assertEquals("ABOVE 99.8 %", chart.words().rows().get(2).get(5));
        assertTrue(chart.words().notes().get(0).contains("east (above 95 %), south (ABOVE 99.8 %), west (below 95 %)"));
    }

    static Stream<FunnelChart.Kind> kinds() {
        return Stream.of(FunnelChart.Kind.values());
    }

    static Stream<OutcomePicture> pictures() {
        return pictures(700).stream();
    }

    private static List<OutcomePicture> pictures(int widthPx) {
        List<OutcomePicture> pictures = new ArrayList<>();
        pictures.add(OutcomePicture.of(MadeUp.survival(), widthPx));
        pictures.add(OutcomePicture.of(MadeUp.highSurvival(), widthPx));
        pictures.add(OutcomePicture.of(MadeUp.cusum(1.1, 3, 4, 29), widthPx));
        kinds().forEach(kind -> pictures.add(OutcomePicture.of(MadeUp.funnel(kind), widthPx)));
        return pictures;
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void png_isAsWideAsAskedForAndNotBlank(OutcomePicture picture) throws Exception {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(picture.png()));
        assertEquals(700, image.getWidth());
        int dark = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                dark += (image.getRGB(x, y) & 0xFF) < 0x60 ? 1 : 0;
            }
        }
        double darkShare = (double) dark / (image.getWidth() * image.getHeight());
        assertTrue(darkShare > 0.005 && darkShare < 0.3, "dark " + darkShare);
    }

    @Test
    void sameChart_sameBytes() {
        List<OutcomePicture> again = pictures(700);
        List<OutcomePicture> first = pictures(700);
        for (int i = 0; i < first.size(); i++) {
            assertArrayEquals(first.get(i).svg(), again.get(i).svg());
        }
    }

    @Test
    void everyGroup_hasALineOfItsOwn() {
        List<LineStyle> styles = Stream.of(0, 1, 2, 3).map(LineStyle::ofGroup).toList();
        assertEquals(4, styles.stream().map(LineStyle::colour).distinct().count());
        assertEquals(
                4,
                styles.stream()
                        .map(style -> Arrays.toString(style.dash()))
                        .distinct()
                        .count());
        assertFalse(Arrays.equals(
                LineStyle.of(CusumSide.WORSE).dash(),
                LineStyle.of(CusumSide.BETTER).dash()));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 499, 4001})
    void width_isRefusedOutsideItsRange(int widthPx) {
        assertThrows(IllegalArgumentException.class, () -> OutcomePicture.of(MadeUp.cusum(4), widthPx));
    }

    @Test
    void nothingToDraw_isRefused() {
        ChartHead head = MadeUp.cusum(4).head();
        assertThrows(
                IllegalArgumentException.class,
                () -> new CusumChart(head, "open", OutcomeCusum.of(List.of(), new CusumDesign(2, 0.5, 4, 4))));
        assertThrows(
                IllegalArgumentException.class,
                () -> new FunnelChart(head, "open", FunnelChart.Kind.GROUPS, Funnel.against(0.1, List.of())));
    }
}
