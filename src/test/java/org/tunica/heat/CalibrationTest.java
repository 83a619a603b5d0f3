package org.tunica.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.tunica.casefile.FaultyInput;

/** Fits to rows the model made itself: they show what the fit can do, not that the model is right. */
class CalibrationTest {
    private static final Calibration CALIBRATION = Calibration.of(HeatKnowledge.numbers());
    private static final String EFFICIENCY = "heat.rf-bipolar.efficiency";
    private static final String ROLL_OFF = "heat.rf-bipolar.roll-off";
    private static final String FILM = "heat.laser.film";
    private static final List<String> THREE = List.of(EFFICIENCY, ROLL_OFF, FILM);
    private static final String HEADER = "device,power_w,pullback_s_per_cm,cycles,pulses_per_cm,wall_mm,tumescent_mm,"
            + "tumescent_c,killed_mm,delayed_mm,char_seen\n";

    private static BenchFile file(String text) {
        return CALIBRATION.read("bench.csv", text.getBytes(StandardCharsets.UTF_8));
    }

    private static String faults(String text, String... free) {
        BenchFile bench = file(text);
        return assertThrows(FaultyInput.class, () -> CALIBRATION.fit(bench, List.of(free)))
                .getMessage();
    }

    private static boolean holdsTruth(CalibrationReport.Fitted fitted) {
        double truth = BenchDemo.TRUE_CONSTANTS.get(fitted.id());
        CalibrationReport.Spread spread = fitted.spread().orElseThrow();
        return spread.low95() <= truth && truth <= spread.high95();
    }

    @Test
    void documentationExample_demoFileGivesItsConstantsBack() {
        CalibrationReport report = CALIBRATION.fit(file(BenchDemo.text()), THREE);
        assertTrue(report.settled());
        assertEquals(3, report.startsAgreeing());
        report.constants().forEach(fitted -> assertTrue(holdsTruth(fitted), fitted::toString));
        assertTrue(report.after().rmsMm() < report.before().rmsMm());
        assertEquals(0.015, report.after().rmsMm(), 0.004, "the noise put in");
        assertEquals(List.of(), report.notToldApart());
        assertTrue(report.condition() < 3, "condition " + report.condition());
        assertEquals(29, report.after().charLooked());
    }

    @Test
    void withoutNoise_exactly() {
        CalibrationReport report = CALIBRATION.fit(file(BenchDemo.exact()), THREE);
        report.constants()
                .forEach(fitted ->
                        assertEquals(BenchDemo.TRUE_CONSTANTS.get(fitted.id()), fitted.value(), 1e-4 * fitted.value()));
        assertTrue(report.after().rmsMm() < 1e-5);
        assertEquals(29, report.after().charAgreed());
    }

    /** Of 95 % intervals one in twenty misses; three of nine would be a one in a hundred event. */
    @Test
    void intervals_holdTheTruthAboutAsOftenAsTheySay() {
        long held = LongStream.rangeClosed(1, 3)
                .mapToObj(seed -> CALIBRATION.fit(file(BenchDemo.noisy(seed)), THREE))
                .flatMap(report -> report.constants().stream())
                .filter(CalibrationTest::holdsTruth)
                .count();
        assertTrue(held >= 7, held + " of 9");
    }

    /** More light lost in a thicker film and more light let out of the fibre make up for each other. */
    @Test
    void filmAndEfficiencyOfAFibre_areNotToldApart() {
        CalibrationReport report = CALIBRATION.fit(file(BenchDemo.text()), List.of(FILM, "heat.laser.efficiency"));
        assertTrue(report.notToldApart(FILM) && report.notToldApart("heat.laser.efficiency"));
        double correlation = report.notToldApart().get(0).correlation().orElseThrow();
        assertTrue(correlation > CalibrationReport.TOLD_APART_BELOW, "correlation " + correlation);
        assertTrue(report.condition() > 10, "condition " + report.condition());
    }

    @Test
    void identicalRows_fixOneConstantAtMost() {
        String rows = "laser-1470-radial,10,4,,,0.65,8,27,0.40,,\n".repeat(3)
                + "laser-1470-radial,10,4,,,0.65,8,27,0.42,,\n".repeat(3);
        CalibrationReport one = CALIBRATION.fit(file(HEADER + rows), List.of(FILM));
        assertEquals(1, one.bench().conditions());
        assertEquals(0.41, one.rows().get(0).after().killDepthMm(), 0.005);
        CalibrationReport two = CALIBRATION.fit(file(HEADER + rows), List.of(FILM, "heat.laser.efficiency"));
        assertEquals(
                List.of(FILM, "heat.laser.efficiency"),
                two.notToldApart().get(0).ids());
        assertTrue(two.notToldApart().get(0).correlation().isEmpty());
        assertTrue(two.constants().stream().allMatch(fitted -> fitted.spread().isEmpty() && fitted.tellsLittle()));
    }

    @Test
    void dataBeyondTheRange_endAtItsEdge() {
        String rows = "laser-1470-radial,10,4,,,0.80,8,27,0.70,,\nlaser-1470-radial,10,3,,,0.80,8,27,0.60,,\n";
        CalibrationReport.Fitted film =
                CALIBRATION.fit(file(HEADER + rows), List.of(FILM)).constants().get(0);
        assertTrue(film.atEdge(), film::toString);
        assertTrue(film.value() >= 0.2 && film.value() < 0.203, film::toString);
    }

    @Test
    void wholeWallDead_saysAtLeast() {
        BenchRow row = file(HEADER + "rf-bipolar-pullback,6,12,,,0.30,8,27,0.30,0.30,no\n")
                .rows()
                .get(0);
        HeatRun run = HeatModel.of(HeatKnowledge.constants()).run(row.setting(), row.slice());
        assertTrue(run.killDepthMm() > 0.4);
        row.offs(run).forEach(off -> assertEquals(0, off.mm()));
        BenchRow thick = file(HEADER + "rf-bipolar-pullback,18,1,,,0.65,8,27,0.65,,no\n")
                .rows()
                .get(0);
        HeatRun shallow = HeatModel.of(HeatKnowledge.constants()).run(thick.setting(), thick.slice());
        assertEquals(shallow.killDepthMm() - 0.65, thick.offs(shallow).get(0).mm(), 1e-12);
    }

    @Test
    void statedDeviations_areNotTakenAsBetterThanTheScatter() {
        String header = HEADER.replace("char_seen", "char_seen,killed_sd_mm");
        String rows =
                "laser-1470-radial,10,4,,,0.65,8,27,%1$s,,,%3$s\nlaser-1470-radial,10,6,,,0.65,8,27,%2$s,,,%3$s\n";
        BenchFile honest = file(header + rows.formatted("0.37", "0.53", "0.05"));
        BenchFile boastful = file(header + rows.formatted("0.32", "0.57", "0.0001"));
        CalibrationReport wide = CALIBRATION.fit(honest, List.of(FILM));
        CalibrationReport scattered = CALIBRATION.fit(boastful, List.of(FILM));
        assertTrue(wide.after().rmsDeviations().orElseThrow() < 1);
        double filmPerDepth = 0.2 / 0.17;
        assertTrue(wide.constants().get(0).spread().orElseThrow().standardError() > 0.02 * filmPerDepth);
        assertTrue(scattered.after().rmsDeviations().orElseThrow() > 100);
        assertTrue(scattered.constants().get(0).spread().orElseThrow().standardError() > 0.01);
    }

    @Test
    void refusals_nameWhatIsWrong() {
        String rows = HEADER + "rf-bipolar-pullback,18,1,,,0.65,8,27,0.30,0.50,no\n";
        String known = faults(rows, "heat.laser.flim", "heat.rf-bipolar.film", EFFICIENCY, EFFICIENCY);
        assertTrue(
                known.contains("heat.laser.flim: is no constant of the heat model; did you mean \"heat.laser.film\"?"));
        assertTrue(known.contains("heat.rf-bipolar.film: has no range in knowledge/"));
        assertTrue(known.contains(EFFICIENCY + ": is named twice"));
        String enough = faults(rows, EFFICIENCY, ROLL_OFF, FILM);
        assertTrue(
                enough.contains("holds 2 depths that end inside the wall; 3 free constants need at least 4"), enough);
        assertTrue(enough.contains(FILM + ": moves no measured depth of any row"), enough);
        assertTrue(faults(rows).contains("no constant is free"));
    }

    @Test
    void acting_leavesOutWhatMovesNothing() {
        BenchFile rf = file(HEADER + "rf-bipolar-pullback,18,4,,,0.9,8,27,0.50,,no\n");
        List<String> acting = CALIBRATION.acting(rf, id -> id.startsWith("heat."));
        assertEquals(List.of(EFFICIENCY, "heat.rf-bipolar.length", ROLL_OFF), acting);
        assertFalse(
                CALIBRATION.acting(rf, id -> true).contains("tissue.delayed.frequency"), "no delayed depth measured");
    }
}
