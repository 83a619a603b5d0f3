package org.tunica.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tunica.knowledge.Family;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.SegmentAdvice;

class WallStripTest {
    private static final double NEAR = 0.2;

    @ParameterizedTest
    @ValueSource(strings = {"small-saphenous-near-sural-nerve", "straight-thigh-trunk", "large-trunk-anticoagulated"})
    void wallsAndDeathAreDrawnToOneScale(String demo) {
        Strips.each(demo, (advice, strip) -> {
            Drawn drawn = Drawn.of(strip.svg(Strips.KNOWLEDGE));
            double pxPerMm = drawn.ruler("ruler") / strip.endMm();
            List<Double> wallsPx = drawn.walls();
            List<Double> deadPx = drawn.widths("dead");
            assertEquals(strip.rows().size(), wallsPx.size());
            for (int i = 0; i < wallsPx.size(); i++) {
                assertEquals(strip.rows().get(i).wallMm() * pxPerMm, wallsPx.get(i), NEAR);
            }
            List<StripRow> heat = strip.rows().stream()
                    .filter(row -> row.family() == Family.HEAT && row.atOnce().isPresent())
                    .toList();
            for (int i = 0; i < heat.size(); i++) {
                double mm = Math.min(
                        strip.endMm(), heat.get(i).atOnce().orElseThrow().middleMm());
                // the legend has one of its own, before all others
                assertEquals(mm * pxPerMm, deadPx.get(i + 1), NEAR);
            }
        });
    }

    @Test
    void aHeatOptionShowsTheSpreadOfItsDeathAndWhatTheNerveFeels() {
        Strips.each("small-saphenous-near-sural-nerve", (advice, strip) -> {
            StripRow laser = row(strip, "laser-1470-radial");
            OptionAdvice option = option(advice, "laser-1470-radial");
            assertTrue(laser.atOnce().orElseThrow().spreads());
            assertEquals(
                    option.predicted().killDepthMm().orElseThrow(),
                    laser.atOnce().orElseThrow().middleMm(),
                    0.1);
            assertTrue(laser.later().orElseThrow().middleMm()
                    >= laser.atOnce().orElseThrow().middleMm());
            Warmed nerve = laser.beside().get(0);
            assertEquals("sural nerve", nerve.says());
            assertEquals(laser.wallMm() + 2, nerve.atMm(), 1e-9);
            assertEquals(
                    option.predicted().nervePeakC().orElseThrow(),
                    nerve.peakC().orElseThrow().middleC(),
                    1);
        });
    }

    @Test
    void whatIsNotRecordedIsNeverDrawnAndNeverZero() {
        Strips.each(
                "small-saphenous-near-sural-nerve",
                tree -> tree.set("limbs.0.segments.0.nerve", null).set("limbs.0.segments.0.depthToSkinMm", null),
                (advice, strip) -> {
                    Drawn drawn = Drawn.of(strip.svg(Strips.KNOWLEDGE));
                    assertEquals(1, drawn.count("nerve"), "the legend alone");
                    assertEquals(1, drawn.count("skin"), "the legend alone");
                    strip.table().stream().skip(1).forEach(cells -> {
                        assertEquals("not recorded", cells.get(5));
                        assertEquals("not recorded", cells.get(6));
                    });
                });
    }

    @Test
    void anOptionWithoutAWallIsNamedInsteadOfDrawn() {
        Strips.each("missing-wall-thickness", (advice, strip) -> {
            assertTrue(strip.rows().stream().noneMatch(row -> row.family() == Family.HEAT));
            assertTrue(strip.untold().stream().anyMatch(says -> says.startsWith("segmental RF, 7 cm element:")));
        });
    }

    @Test
    void everythingDrawnIsToldInWordsToo() {
        Strips.each("straight-thigh-trunk", (advice, strip) -> {
            String says = Drawn.of(strip.svg(Strips.KNOWLEDGE)).title();
            strip.rows().forEach(row -> assertTrue(says.contains(row.says()), says));
            assertTrue(says.contains("LEFT leg") || says.contains("RIGHT leg"), says);
            assertEquals(strip.rows().size() + 1, strip.table().size());
            assertFalse(strip.sentences().isEmpty());
        });
    }

    @Test
    void aReachThatRunsBackwardsIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Reach(2, 1, 3));
        assertThrows(IllegalArgumentException.class, () -> new Reach(Double.NaN, 1, 3));
    }

    private static StripRow row(WallStrip strip, String technique) {
        return strip.rows().stream()
                .filter(row -> row.technique().equals(technique))
                .findFirst()
                .orElseThrow();
    }

    private static OptionAdvice option(SegmentAdvice advice, String technique) {
        return advice.options().stream()
                .filter(option -> option.technique().equals(technique))
                .findFirst()
                .orElseThrow();
    }
}
