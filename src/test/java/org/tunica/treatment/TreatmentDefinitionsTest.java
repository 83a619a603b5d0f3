package org.tunica.treatment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Knowledge;
import org.tunica.physics.SegmentalCycles;

/**
 * Worked rows of the evidence, by calculator; rows 1 to 16 stand in {@code PublishedDosesTest}, 19 in {@code NoteWriterTest}, 31 to 33 in {@code
 * WallGeometryTest}, 34 and 35 in {@code VolumesAndReachTest}, 40 in {@code AdhesiveTest}, those that rules decide in {@code
 * EvidenceVerdictsTest}.
 */
class TreatmentDefinitionsTest {
    private static final Knowledge KNOWLEDGE = Knowledge.of(Bundle.shipped());
    private static final FollowUpLimits LIMITS = FollowUpLimits.of(KNOWLEDGE);
    private static final double TRIAL_J_PER_CM = KNOWLEDGE.value("small-saphenous.laser.energy");
    private static final double TRIAL_W = KNOWLEDGE.value("small-saphenous.laser.power");

    /** As a note completes a record that names power, linear energy and length alone. */
    private static final HeatBalance TRIAL = HeatBalance.of(
            new DeliveredHeat(
                    OptionalDouble.of(20),
                    OptionalDouble.of(TRIAL_W),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.of(TRIAL_J_PER_CM),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalInt.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty()),
            OptionalDouble.empty(),
            0.02);

    @Test
    void row17_linearEnergyAndPowerFixThePullback() { // S-0025: 70 J/cm at 12 W
        assertEquals(5.83, TRIAL.value(HeatBalance.Number.PULLBACK).orElseThrow(), 0.005);
    }

    @Test
    void row18_thatOverTwentyCentimetres() { // S-0025, arithmetic
        assertEquals(1400, TRIAL.value(HeatBalance.Number.ENERGY).orElseThrow(), 1e-9);
        assertEquals(117, TRIAL.value(HeatBalance.Number.TIME).orElseThrow(), 0.5);
    }

    @Test
    void row20_cyclesOfTheLongElement() { // S-0029; cycles and their time from memory, unverified
        SegmentalCycles cycles = new SegmentalCycles(
                KNOWLEDGE.value("element.long.length"), (int) KNOWLEDGE.value("segmental.cycles.first"), (int)
                        KNOWLEDGE.value("segmental.cycles.plain"));
        double cycleS = KNOWLEDGE
                .technique("rf-segmental-7cm")
                .settings()
                .get("cycleSeconds")
                .typical()
                .orElseThrow();
        assertEquals(6, cycles.stretches(36.7));
        assertEquals(7, cycles.cycles(36.7));
        assertEquals(140, cycles.seconds(36.7, cycleS), 1e-9);
        assertEquals(5, cycles.stretches(35));
    }

    @ParameterizedTest
    @CsvSource({"0, I", "40, II", "49.9, II", "50.1, III", "60, III", "99, III", "100, IV"})
    void row25_classesOfHeatInducedThrombus(double percent, HeatInducedThrombusClass expected) { // S-0043
        assertEquals(expected, HeatInducedThrombusClass.of(percent));
    }

    @Test
    void row26_exactlyHalfIsDefinedByNoTextRead() { // S-0043, gap
        assertEquals(HeatInducedThrombusClass.UNDEFINED, HeatInducedThrombusClass.of(50));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, 100.1, Double.NaN})
    void noShareOfALumenIsRefused(double percent) {
        assertThrows(IllegalArgumentException.class, () -> HeatInducedThrombusClass.of(percent));
    }

    @Test
    void row36_oneVeinClosedByOneDefinitionAndNotByTheOther() { // S-0023
        assertTrue(ClosureDefinition.MECHANOCHEMICAL_OPEN_PART.closed(30, 10, LIMITS));
        assertEquals(0.667, ClosureDefinition.occludedShare(30, 10), 5e-4);
        assertFalse(ClosureDefinition.MECHANOCHEMICAL_OCCLUDED_SHARE.closed(30, 10, LIMITS));
        assertTrue(ClosureDefinition.MECHANOCHEMICAL_OCCLUDED_SHARE.closed(100, 15, LIMITS));
    }

    @Test
    void adhesiveAllowsAnOpenStump() { // S-0022, from memory, unverified
        assertTrue(ClosureDefinition.ADHESIVE_OPEN_STUMP.closed(30, 5, LIMITS));
        assertFalse(ClosureDefinition.ADHESIVE_OPEN_STUMP.closed(30, 5.1, LIMITS));
    }

    @Test
    void heatAllowsAShortOpenPartOrNoneByTheDefinitionNamed() { // S-0022, from memory, unverified; S-1101
        assertTrue(ClosureDefinition.HEAT_OPEN_PART.closed(30, 5, LIMITS));
        assertFalse(ClosureDefinition.HEAT_OPEN_PART.closed(30, 5.1, LIMITS));
        assertTrue(ClosureDefinition.HEAT_NO_FLOW.closed(30, 0, LIMITS));
        assertFalse(ClosureDefinition.HEAT_NO_FLOW.closed(30, 0.1, LIMITS));
    }

    @Test
    void moreOpenThanTreatedIsRefused() {
        assertThrows(
                IllegalArgumentException.class, () -> ClosureDefinition.MECHANOCHEMICAL_OPEN_PART.closed(8, 9, LIMITS));
    }

    @Test
    void row37_severityScore() { // S-0083
        assertEquals(30, ClinicalSeverityScore.ofAll(3).total());
        assertEquals(0, ClinicalSeverityScore.ofAll(0).total());
        assertThrows(IllegalArgumentException.class, () -> ClinicalSeverityScore.ofAll(4));
    }

    @Test
    void aScoreWithoutOneOfItsItemsIsRefused() {
        Map<ClinicalSeverityScore.Item, Integer> items =
                new EnumMap<>(ClinicalSeverityScore.ofAll(1).items());
        items.remove(ClinicalSeverityScore.Item.PAIN);
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> new ClinicalSeverityScore(items));
        assertTrue(refused.getMessage().contains("PAIN"), refused.getMessage());
    }

    @Test
    void row38_laserAgainstMechanochemicalClosure() { // S-0057
        Proportion laser = new Proportion(63, 69);
        Proportion mechanochemical = new Proportion(53, 69);
        assertEquals(91.3, laser.percent(), 0.05);
        assertEquals(76.8, mechanochemical.percent(), 0.05);
        assertEquals(14.5, laser.percent() - mechanochemical.percent(), 0.05);
    }

    @ParameterizedTest
    @CsvSource({"97, 0.90", "29, 0.27"})
    void row39_neurologicalEventsAfterFoam(int events, double expectedPercent) { // S-0075
        assertEquals(expectedPercent, new Proportion(events, 10_819).percent(), 0.005);
    }
}
