package org.tunica.treatment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.tunica.casefile.Room;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Knowledge;
import org.tunica.session.SessionDoses;

/**
 * Sixteen worked doses, by calculator, held against the limits that plans keep and notes tell. The limits come from the
 * sources beside each, as knowledge/doses.yaml holds them; "from memory, unverified" where the source was not read.
 */
class PublishedDosesTest {
    private static final SessionDoses DOSES = new SessionDoses(Knowledge.of(Bundle.shipped()));

    @Test
    void row1_polidocanolByWeight() { // Phlebology 2014;29:338, from memory, unverified
        assertEquals(140, most(DOSES.polidocanol(1)) * 70, 1e-9);
    }

    @Test
    void row2_onePerCentLiquid_theSessionVolumeBindsBeforeTheMass() { // product label, read in extracts
        assertTrue(within(DOSES.polidocanol(mg(liquid(14, 1)) / 70)));
        assertFalse(within(DOSES.polidocanolLiquid(14)));
        assertTrue(within(DOSES.polidocanolLiquid(10)));
        assertFalse(within(DOSES.polidocanolLiquid(10.1)));
    }

    @Test
    void row3_twoPerCentLiquid() { // Phlebology 2014;29:338, from memory, unverified
        assertTrue(within(DOSES.polidocanol(mg(liquid(7, 2)) / 70)) && within(DOSES.polidocanolLiquid(7)));
        assertFalse(within(DOSES.polidocanol(mg(liquid(7.1, 2)) / 70)));
    }

    @Test
    void row4_threePerCentLiquid() { // the same
        assertTrue(within(DOSES.polidocanol(mg(liquid(4.66, 3)) / 70)));
        assertFalse(within(DOSES.polidocanol(mg(liquid(5, 3)) / 70)));
    }

    @Test
    void row5_foamOfOnePartToFour() { // ratio from memory, unverified
        assertEquals(2, GivenDoses.liquidMl(foam(10, 3, 4)).orElseThrow(), 1e-12);
        assertEquals(60, mg(foam(10, 3, 4)), 1e-12);
    }

    @Test
    void row6_thatFoamInAnAdult() {
        assertEquals(0.86, mg(foam(10, 3, 4)) / 70, 0.005);
        assertTrue(within(DOSES.polidocanol(mg(foam(10, 3, 4)) / 70)) && within(DOSES.foam(10)));
    }

    @Test
    void row7_thatFoamInALightBody() {
        assertEquals(2.14, mg(foam(10, 3, 4)) / 28, 0.005);
        assertFalse(within(DOSES.polidocanol(mg(foam(10, 3, 4)) / 28)));
        assertTrue(within(DOSES.polidocanol(mg(foam(10, 3, 4)) / 30)));
    }

    @Test
    void row8_moreFoamThanTheRoutineCeiling() { // Phlebology 2014;29:338, from memory, unverified
        assertFalse(within(DOSES.foam(12)));
    }

    @Test
    void row9_mechanochemicalDrug() { // the same limit; J Vasc Surg Venous Lymphat Disord 2022 makes the point
        assertEquals(2.25, mg(liquid(6, 3)) / 80, 1e-9);
        assertFalse(within(DOSES.polidocanol(mg(liquid(6, 3)) / 80)));
        assertEquals(159, mg(liquid(5.3, 3)), 1e-9);
        assertTrue(within(DOSES.polidocanol(mg(liquid(5.3, 3)) / 80)));
    }

    @Test
    void row10_strongTetradecyl() { // product label, from memory, unverified
        assertEquals(120, mg(liquid(4, 3)), 1e-9);
        assertTrue(within(DOSES.tetradecyl(DOSES.tetradecylLiquidShare(4, 3))));
        assertFalse(within(DOSES.tetradecyl(DOSES.tetradecylLiquidShare(4.1, 3))));
    }

    @Test
    void row11_plainLidocaine() { // product label, second hand
        assertMost(300, DOSES.lidocaine(1, false, kg(70)), 70);
        assertMost(225, DOSES.lidocaine(1, false, kg(50)), 50);
        assertMost(300, DOSES.lidocaineElsewhere(1, false, kg(70)), 70);
    }

    @Test
    void row12_lidocaineWithAdrenaline_outsideATumescentBed() { // product labels
        assertMost(490, DOSES.lidocaineElsewhere(1, true, kg(70)), 70);
        assertMost(500, DOSES.lidocaineElsewhere(1, true, kg(75)), 75);
    }

    @Test
    void row13_tumescentVolumes() { // Anesth Analg 2016;122:1350 and Phlebology 2019, abstracts
        assertTrue(unwarned(DOSES.lidocaine(mg(liquid(1050, 0.1)) / 70, true, kg(70))));
        assertFalse(unwarned(DOSES.lidocaine(mg(liquid(1051, 0.1)) / 70, true, kg(70))));
        assertTrue(within(DOSES.lidocaine(mg(liquid(1960, 0.1)) / 70, true, kg(70))));
        assertFalse(within(DOSES.lidocaine(mg(liquid(1961, 0.1)) / 70, true, kg(70))));
    }

    @Test
    void rows14And15_aMixAndItsDose() { // recipe of a practice page
        double mgPerMl = mg(liquid(50, 1)) / (50 + 500 + 16);
        assertEquals(0.883, mgPerMl, 5e-4);
        double mg = 40 * 10 * mgPerMl;
        assertEquals(353, mg, 0.5);
        assertEquals(5.05, mg / 70, 0.005);
        assertTrue(unwarned(DOSES.lidocaine(mg / 70, true, kg(70))));
    }

    @Test
    void row16_bothLegs() {
        double mgPerKg = mg(liquid((60 + 55) * 10, 0.1)) / 60;
        assertEquals(19.2, mgPerKg, 0.05);
        assertFalse(unwarned(DOSES.lidocaine(mgPerKg, true, kg(60))));
        assertTrue(within(DOSES.lidocaine(mgPerKg, true, kg(60))));
        assertTrue(unwarned(DOSES.lidocaine(15, true, kg(60))));
        assertTrue(within(DOSES.lidocaine(28, true, kg(60))));
        assertFalse(within(DOSES.lidocaine(28.001, true, kg(60))), "rounding makes no room");
    }

    @Property(seed = "20260101")
    void aHeavierBodyNeverTakesLess(@ForAll @DoubleRange(min = 30, max = 150) double weightKg) {
        for (boolean adrenaline : List.of(true, false)) {
            double lighter = most(DOSES.lidocaineElsewhere(1, adrenaline, kg(weightKg))) * weightKg;
            double heavier = most(DOSES.lidocaineElsewhere(1, adrenaline, kg(weightKg + 1))) * (weightKg + 1);
            // limits are told rounded down, to four digits
            assertTrue(heavier >= lighter - 0.2, () -> weightKg + " kg: " + lighter + ", " + heavier);
        }
    }

    /** Told rounded, and never so that rounding makes room. */
    private static void assertMost(double mg, SessionDoses.Held dose, double weightKg) {
        double told = most(dose) * weightKg;
        assertTrue(told <= mg + 1e-9 && told > mg - 0.1, () -> told + " mg");
    }

    private static OptionalDouble kg(double weightKg) {
        return OptionalDouble.of(weightKg);
    }

    private static double most(SessionDoses.Held dose) {
        return dose.total().limit().orElseThrow();
    }

    private static boolean within(SessionDoses.Held dose) {
        return !dose.over();
    }

    /** Below the line, too, above which a person confirms. */
    private static boolean unwarned(SessionDoses.Held dose) {
        return within(dose) && dose.total().warning().isEmpty();
    }

    private static double mg(DeliveredSegment.Sclerosant given) {
        return GivenDoses.drugMg(given).orElseThrow();
    }

    private static DeliveredSegment.Sclerosant liquid(double ml, double percent) {
        return new DeliveredSegment.Sclerosant(
                Optional.of(Room.SclerosantDrug.POLIDOCANOL),
                OptionalDouble.of(percent),
                OptionalDouble.of(ml),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private static DeliveredSegment.Sclerosant foam(double foamMl, double percent, double gasParts) {
        return new DeliveredSegment.Sclerosant(
                Optional.of(Room.SclerosantDrug.POLIDOCANOL),
                OptionalDouble.of(percent),
                OptionalDouble.empty(),
                Optional.of(Room.FoamGas.AIR),
                OptionalDouble.of(gasParts),
                OptionalDouble.of(foamMl));
    }
}
