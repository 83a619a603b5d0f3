package org.tunica.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tunica.CaseTree;
import org.tunica.Tunica;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.w3c.dom.Element;

class LegMapTest {
    private static final String SEGMENT = "limbs.0.segments.0.";

    @Test
    void eachSegmentIsThereWithItsNameWidthAndWords() {
        Limb limb = limb(CaseTree.demo("both-legs-many-segments"));
        Drawn drawn = Drawn.of(new LegMap(limb, Map.of("L1", "a first choice")).svg());
        assertEquals(limb.segments().size(), drawn.of("path", "vein").size());
        assertTrue(
                drawn.texts("text").contains("L1, 6.6 mm"), drawn.texts("text").toString());
        assertTrue(drawn.texts("text").contains("a first choice"));
        assertTrue(drawn.texts("text").contains("LEFT leg, from the front"));
        assertTrue(drawn.title().contains("a first choice"));
    }

    @Test
    void aWiderVeinIsDrawnThickerAndAnUnknownWidthIsDottedAndSaysSo() {
        double thin = stroke(CaseTree.soundLeg().set(SEGMENT + "lumenDiameterMm", 4));
        double wide = stroke(CaseTree.soundLeg().set(SEGMENT + "lumenDiameterMm", 9));
        assertEquals(9.0 / 4, wide / thin, 0.05);
        Drawn unknown = drawn(CaseTree.soundLeg().set(SEGMENT + "lumenDiameterMm", null));
        assertEquals(1, unknown.of("path", "unknown").size());
        assertTrue(unknown.title().contains("width not recorded"));
    }

    /** The inner side: to the right in a right leg seen from the front, to the left in a left one. */
    @Test
    void aLeftLegMirrorsARightOne() {
        CaseTree tree =
                CaseTree.soundLeg().set(SEGMENT + "vein", "great-saphenous").set(SEGMENT + "level", "thigh");
        double right = start(drawn(tree.copy().set("limbs.0.side", "right")));
        double left = start(drawn(tree.copy().set("limbs.0.side", "left")));
        assertTrue(right > left, right + " " + left);
        assertEquals(0.62 * 200, right + left, 0.2);
    }

    @ParameterizedTest
    @EnumSource(Segment.Vein.class)
    void everyVeinAtEveryLevelLiesInsideTheLeg(Segment.Vein vein) {
        for (Segment.Level level : Segment.Level.values()) {
            CaseTree tree =
                    CaseTree.soundLeg().set(SEGMENT + "vein", vein.word()).set(SEGMENT + "level", level.word());
            Segment segment = limb(tree).segments().get(0);
            List<LegPath.Point> points = LegPath.of(segment);
            for (LegPath.Point point : points) {
                assertTrue(point.x() > 50 && point.x() < 155, vein + " " + level + " " + point);
                assertTrue(point.y() > 40 && point.y() < 650, vein + " " + level + " " + point);
            }
        }
    }

    @Test
    void aViewWithoutSegmentsIsLeftOut() {
        CaseTree tree =
                CaseTree.soundLeg().set(SEGMENT + "vein", "great-saphenous").set(SEGMENT + "level", "thigh");
        List<String> texts = drawn(tree).texts("text");
        assertTrue(texts.stream().anyMatch(text -> text.endsWith("from the front")), texts.toString());
        assertTrue(texts.stream().noneMatch(text -> text.endsWith("from behind")), texts.toString());
    }

    private static double stroke(CaseTree tree) {
        return Drawn.number(drawn(tree).of("path", "vein").get(0), "stroke-width");
    }

    private static double start(Drawn drawn) {
        Element path = drawn.of("path", "vein").get(0);
        return Double.parseDouble(path.getAttribute("d").substring(1).split(" ")[0]);
    }

    private static Drawn drawn(CaseTree tree) {
        return Drawn.of(new LegMap(limb(tree), Map.of()).svg());
    }

    private static Limb limb(CaseTree tree) {
        return Tunica.shipped().readCase("case", tree.bytes()).limbs().get(0);
    }
}
