package org.tunica.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoublePredicate;
import org.junit.jupiter.api.Test;
import org.tunica.physics.WallGeometry;

/**
 * Bench facts of the trade (common practice, no source) against the model: wall 0.65 mm on each device, tumescence 8 mm
 * at 27 C. Fourteen constants were tuned on these facts, so PASS says that the set is consistent, not that it is true.
 * N is the immediate, D the delayed depth in walls (at most 1), CI the char index, T1 and T2 the peaks 1 and 2 mm out.
 */
class HeatBenchFactsTest {
    private static final String RF = "rf-bipolar-pullback";
    private static final String RADIAL = "laser-1470-radial";
    private static final String FORWARD = "laser-1470-forward";
    /** Depth tolerance where the fact names a share of the wall. */
    private static final double BY = 0.10;

    private final HeatModel model = HeatModel.of(
            HeatKnowledge.constants(), Fineness.CALIBRATED.withStepFactor(1).withSteamReruns(2));
    private final HeatModel fine = HeatModel.of(HeatKnowledge.constants(), Fineness.CALIBRATED.withStepFactor(0.5));
    private final List<Fact> facts = new ArrayList<>();

    private enum Verdict {
        PASS,
        PARTIAL,
        FAIL
    }

    private record Fact(String id, String says, String computed, Verdict verdict) {
        @Override
        public String toString() {
            return String.format(Locale.ROOT, "%-3s %-8s %-72s %s", id, verdict, says, computed);
        }
    }

    @Test
    void asGoodAsTheReferenceModel() {
        rfFacts();
        limitFacts();
        forwardFacts();
        radialFacts();
        sparingFacts();
        facts.forEach(System.out::println);
        long pass = count(Verdict.PASS);
        long fail = count(Verdict.FAIL);
        System.out.println(pass + " PASS, " + count(Verdict.PARTIAL) + " PARTIAL, " + fail + " FAIL");
        assertEquals(19, facts.size());
        assertTrue(pass >= 13, "only " + pass + " pass");
        assertTrue(fail <= 1, fail + " fail");
    }

    private void rfFacts() {
        double wall = WallGeometry.ofOuterDiameter(6.0, 0.30).wallOnRadiusMm(0.93);
        add("1", "whole wall 0.6 to 0.7 mm", text("wrapped %.3f mm", wall), wall > 0.6 && wall < 0.7, false);
        HeatRun quick = run(RF, 18, 1);
        HeatRun quicker = run(RF, 20, 1);
        add(
                "2",
                "RF 18 to 20 W x 1 s/cm burns about 3/4 of the wall, delayed death counted",
                text("D %.2f and %.2f, N %.2f and %.2f", d(quick), d(quicker), n(quick), n(quicker)),
                Math.abs(d(quick) - 0.75) <= BY && Math.abs(d(quicker) - 0.75) <= BY,
                false);
        HeatRun slow = run(RF, 6, 12);
        add(
                "3a",
                "RF 6 W x 12 s/cm: whole wall dead, no char",
                text("N %.2f, CI %.2f", n(slow), slow.charIndex()),
                n(slow) >= 1 && !slow.chars(),
                false);
        HeatRun strong = run(RF, 18, 4);
        add(
                "3b",
                "RF 18 W x 4 s/cm: char, not through",
                text("N %.2f, CI %.2f", n(strong), strong.charIndex()),
                strong.chars() && n(strong) < 1,
                false);
        add(
                "3c",
                "... and burns mainly the inner side",
                text("N %.2f against %.2f at 18 W x 1", n(strong), n(quick)),
                n(strong) <= n(quick) + BY,
                false);
    }

    private void limitFacts() {
        double necroticW = highestCleanW(false);
        double delayedW = highestCleanW(true);
        add(
                "4a",
                "RF power not above about 15 W to avoid char",
                text("char-free to N 1 up to %.0f W, to D 1 up to %.0f W", necroticW, delayedW),
                Math.abs(necroticW - 15) <= 2,
                necroticW < 15 && delayedW > 15);
        double charS = firstPullback(pullback -> run(RF, 6, pullback).chars());
        double nerveS = firstPullback(pullback -> near(RF, 6, pullback, 1).cem43Min() >= 40);
        add(
                "4b",
                "not slower than about 12 s/cm",
                text("at 6 W char from %.1f s/cm, CEM43 40 min at 1 mm from %.1f s/cm", charS, nerveS),
                Math.abs(charS - 12) <= 2,
                Math.abs(nerveS - 12) <= 2);
        double rfJ = 6 * firstPullback(pullback -> run(RF, 6, pullback).wallFractionDelayed() >= 1);
        double laserJ = 10 * firstPullback(pullback -> run(RADIAL, 10, pullback).wallFractionDelayed() >= 1);
        add(
                "4c",
                "a smallest linear energy exists",
                text("D 1 from %.0f J/cm (RF 6 W), %.0f J/cm (radial 10 W)", rfJ, laserJ),
                rfJ > 10 && laserJ > 10,
                false);
    }

    private void forwardFacts() {
        HeatRun low = run("laser-810-forward", 10, 6);
        add(
                "5a",
                "810 forward 10 W 60 J/cm: small coagulation, closure by delayed death",
                text("N %.2f, D %.2f", n(low), d(low)),
                n(low) < 0.5 && d(low) >= 1 - BY,
                false);
        HeatRun high = run(FORWARD, 10, 4);
        add(
                "5b",
                "1470 forward 10 W 40 J/cm: destroyed outward",
                text("N %.2f, D %.2f", n(high), d(high)),
                n(high) >= 1 - BY,
                d(high) >= 0.8);
        HeatRun higher = run(FORWARD, 10, 6);
        // "Almost through" is wording, not a figure: three quarters and more of the wall, the rest by delayed death.
        add(
                "5c",
                "1470 forward 10 W 60 J/cm: almost through",
                text("N %.2f, D %.2f", n(higher), d(higher)),
                n(higher) >= 0.75 && n(higher) < 1 && d(higher) >= 1 - BY,
                false);
    }

    private void radialFacts() {
        HeatRun part = run(RADIAL, 10, 4);
        add(
                "6a",
                "1470 radial 10 W 40 J/cm: partial, some delayed death",
                text("N %.2f, D %.2f", n(part), d(part)),
                n(part) < 0.75 && d(part) > n(part) + BY && d(part) < 1,
                false);
        HeatRun whole = run(RADIAL, 10, 8);
        add(
                "6b",
                "1470 radial 10 W 80 J/cm: whole, no char, no perforation",
                text(
                        "N %.2f, D %.2f, CI %.2f, perforation %.2f",
                        n(whole), d(whole), whole.charIndex(), whole.perforationIndex()),
                n(whole) >= 1 - BY && !whole.chars() && whole.perforationIndex() < 1,
                false);
        HeatSetting jacket = new HeatSetting.Pulled("laser-1470-jacket", 10, 8);
        HeatRun near = fine.run(jacket, slice(), Contact.NEAR_SIDE);
        add(
                "6c",
                "jacketed forward 80 J/cm: char and near perforation on one side",
                text("near N %.2f, CI %.1f, perforation %.2f", n(near), near.charIndex(), near.perforationIndex()),
                n(near) >= 1 && near.chars() && near.perforationIndex() >= 1 - BY,
                false);
        HeatRun far = model.run(jacket, slice(), Contact.FAR_SIDE);
        add(
                "6d",
                "... the other side dies later",
                text("far N %.2f, D %.2f", n(far), d(far)),
                d(far) >= 1 - BY,
                d(far) >= 0.8);
    }

    private void sparingFacts() {
        WarmedPoint fast = near(RADIAL, 10, 6, 1);
        WarmedPoint slow = near(RADIAL, 6, 10, 1);
        double shallower = n(run(RADIAL, 6, 10)) - n(run(RADIAL, 10, 6));
        add(
                "7a",
                "60 J/cm radial: 10 W x 6 spares the nerve more than 6 W x 10",
                text("T1 %.1f and %.1f C, N differs by %.2f", fast.peakC(), slow.peakC(), shallower),
                fast.peakC() < slow.peakC() && shallower < 0.05,
                false);
        double rfFast = near(RF, 10, 6, 1).peakC();
        double rfSlow = near(RF, 6, 10, 1).peakC();
        double rfShallower = n(run(RF, 6, 10)) - n(run(RF, 10, 6));
        add(
                "7b",
                "... and with RF",
                text("T1 %.1f and %.1f C, N differs by %.2f", rfFast, rfSlow, rfShallower),
                rfFast < rfSlow && rfShallower < 0.05,
                rfFast < rfSlow);
        powerFacts();
    }

    private void powerFacts() {
        double[] t1 = new double[5];
        for (int i = 0; i < t1.length; i++) {
            t1[i] = near(RADIAL, 4 + 2 * i, throughS(RADIAL, 4 + 2 * i), 1).peakC();
        }
        add(
                "7c",
                "highest power, shortest time that kills the wall warms least around it",
                text(
                        "radial just through, T1 at 4 6 8 10 12 W: %.1f %.1f %.1f %.1f %.1f C",
                        t1[0], t1[1], t1[2], t1[3], t1[4]),
                t1[0] > t1[1] && t1[1] > t1[2] && t1[2] > t1[3] && t1[3] > t1[4],
                false);
        double element = model.run(new HeatSetting.Held("rf-segmental-7cm", 1), slice().withNerveGapMm(1))
                .nerve()
                .orElseThrow()
                .peakC();
        double microwave = near("microwave", 40, 2.4, 1).peakC();
        add(
                "7d",
                "7 cm element spreads heat further than a ring or a 1 cm zone",
                text("T1 element %.1f, radial just through %.1f, microwave %.1f C", element, t1[3], microwave),
                element > t1[3] && element > microwave,
                false);
    }

    private static String text(String form, Object... values) {
        return String.format(Locale.ROOT, form, values);
    }

    private void add(String id, String says, String computed, boolean pass, boolean partial) {
        facts.add(new Fact(id, says, computed, pass ? Verdict.PASS : partial ? Verdict.PARTIAL : Verdict.FAIL));
    }

    private long count(Verdict verdict) {
        return facts.stream().filter(fact -> fact.verdict() == verdict).count();
    }

    private static VeinSlice slice() {
        return VeinSlice.of(0.65, 8, 27);
    }

    /** Centred in the vein unless a fact speaks of sides. */
    private HeatRun run(String device, double powerW, double pullback) {
        return model.run(new HeatSetting.Pulled(device, powerW, pullback), slice(), Contact.CONCENTRIC);
    }

    private WarmedPoint near(String device, double powerW, double pullback, double gapMm) {
        HeatSetting setting = new HeatSetting.Pulled(device, powerW, pullback);
        return model.run(setting, slice().withNerveGapMm(gapMm), Contact.CONCENTRIC)
                .nerve()
                .orElseThrow();
    }

    private static double n(HeatRun run) {
        return run.wallFractionKilled();
    }

    private static double d(HeatRun run) {
        return run.wallFractionDelayed();
    }

    private static double firstPullback(DoublePredicate reached) {
        double pullback = 0.5;
        while (pullback < 28 && !reached.test(pullback)) {
            pullback += 0.1;
        }
        return pullback;
    }

    private double throughS(String device, double powerW) {
        return firstPullback(pullback -> run(device, powerW, pullback).killDepthPerWall() >= 1);
    }

    /** Highest whole power with which the wall can be killed at some pull-back before charring starts. */
    private double highestCleanW(boolean delayedCounts) {
        double highest = 0;
        for (double powerW = 4; powerW <= 30; powerW++) {
            double power = powerW;
            double through = firstPullback(pullback -> {
                HeatRun run = run(RF, power, pullback);
                return (delayedCounts ? run.wallFractionDelayed() : run.killDepthPerWall()) >= 1;
            });
            highest = run(RF, power, through).chars() ? highest : powerW;
        }
        return highest;
    }
}
