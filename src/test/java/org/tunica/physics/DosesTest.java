package org.tunica.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Knowledge;
import org.tunica.physics.Doses.Level;

/**
 * Sixteen worked doses, by calculator. The limits behind them come from the sources beside each, as knowledge/doses.yaml
 * holds them; "from memory, unverified" where the source was not read.
 */
class DosesTest {
    private static final Doses DOSES = new Doses(DoseLimits.of(Knowledge.of(Bundle.shipped())));

    @Test
    void row1_polidocanolByWeight() { // Phlebology 2014;29:338, from memory, unverified
        assertEquals(140, DOSES.polidocanolDayMg(70), 1e-9);
    }

    @Test
    void row2_onePerCentLiquid_theSessionVolumeBindsBeforeTheMass() { // product label, read in extracts
        assertEquals(14, DOSES.polidocanolLiquidByMassMl(70, 1), 1e-9);
        assertEquals(10, DOSES.polidocanolLiquidMl(70, 1), 1e-9);
    }

    @Test
    void row3_twoPerCentLiquid() { // Phlebology 2014;29:338, from memory, unverified
        assertEquals(7, DOSES.polidocanolLiquidMl(70, 2), 1e-9);
    }

    @Test
    void row4_threePerCentLiquid() { // the same
        assertEquals(4.67, DOSES.polidocanolLiquidMl(70, 3), 0.005);
        assertEquals(Level.OVER, DOSES.polidocanol(Doses.liquidMg(5, 3), 70));
    }

    @Test
    void row5_foamOfOnePartToFour() { // ratio from memory, unverified
        FoamMix foam = new FoamMix(10, 3, 4);
        assertEquals(2, foam.liquidMl(), 1e-12);
        assertEquals(8, foam.gasMl(), 1e-12);
        assertEquals(60, foam.drugMg(), 1e-12);
    }

    @Test
    void row6_thatFoamInAnAdult() {
        FoamMix foam = new FoamMix(10, 3, 4);
        assertEquals(0.86, foam.drugMg() / 70, 0.005);
        assertEquals(Level.WITHIN, DOSES.polidocanolFoam(foam, 70));
    }

    @Test
    void row7_thatFoamInALightBody() {
        FoamMix foam = new FoamMix(10, 3, 4);
        assertEquals(2.14, foam.drugMg() / 28, 0.005);
        assertEquals(Level.OVER, DOSES.polidocanolFoam(foam, 28));
        assertEquals(Level.WITHIN, DOSES.polidocanolFoam(foam, 30));
    }

    @Test
    void row8_moreFoamThanTheRoutineCeiling() { // Phlebology 2014;29:338, from memory, unverified
        assertEquals(Level.OVER, DOSES.polidocanolFoam(new FoamMix(12, 1, 4), 70));
    }

    @Test
    void row9_mechanochemicalDrug() { // the same limit; J Vasc Surg Venous Lymphat Disord 2022 makes the point
        assertEquals(2.25, Doses.liquidMg(6, 3) / 80, 1e-9);
        assertEquals(Level.OVER, DOSES.polidocanol(Doses.liquidMg(6, 3), 80));
        assertEquals(159, Doses.liquidMg(5.3, 3), 1e-9);
        assertEquals(Level.WITHIN, DOSES.polidocanol(Doses.liquidMg(5.3, 3), 80));
    }

    @Test
    void row10_strongTetradecyl() { // product label, from memory, unverified
        assertEquals(120, Doses.liquidMg(4, 3), 1e-9);
        assertEquals(Level.WITHIN, DOSES.strongTetradecyl(4));
        assertEquals(Level.OVER, DOSES.strongTetradecyl(4.1));
    }

    @Test
    void row11_plainLidocaine() { // product label, second hand
        assertEquals(300, DOSES.lidocaineMg(70, false), 1e-9);
        assertEquals(225, DOSES.lidocaineMg(50, false), 1e-9);
    }

    @Test
    void row12_lidocaineWithAdrenaline() { // product labels
        assertEquals(490, DOSES.lidocaineMg(70, true), 1e-9);
        assertEquals(500, DOSES.lidocaineMg(75, true), 1e-9);
    }

    @Test
    void row13_tumescentVolumes() { // Anesth Analg 2016;122:1350 and Phlebology 2019, abstracts
        assertEquals(1050, DOSES.tumescentConfirmMl(70, 0.1), 1e-9);
        assertEquals(1960, DOSES.tumescentStopMl(70, 0.1), 1e-9);
    }

    @Test
    void rows14And15_aMixAndItsDose() { // recipe of a practice page
        double mgPerMl = Doses.liquidMg(50, 1) / (50 + 500 + 16);
        assertEquals(0.883, mgPerMl, 5e-4);
        double mg = 40 * 10 * mgPerMl;
        assertEquals(353, mg, 0.5);
        assertEquals(5.05, mg / 70, 0.005);
        assertEquals(Level.WITHIN, DOSES.tumescent(mg / 70));
    }

    @Test
    void row16_bothLegs() {
        double mgPerKg = Doses.liquidMg((60 + 55) * 10, 0.1) / 60;
        assertEquals(19.2, mgPerKg, 0.05);
        assertEquals(Level.CONFIRM, DOSES.tumescent(mgPerKg));
        assertEquals(Level.WITHIN, DOSES.tumescent(15));
        assertEquals(Level.CONFIRM, DOSES.tumescent(28));
        assertEquals(Level.OVER, DOSES.tumescent(28.01));
    }

    @Property(seed = "20260101")
    void aHeavierBodyNeverTakesLess(
            @ForAll @DoubleRange(min = 30, max = 150) double weightKg,
            @ForAll @DoubleRange(min = 0.25, max = 3) double percent) {
        assertTrue(DOSES.polidocanolLiquidMl(weightKg + 1, percent) >= DOSES.polidocanolLiquidMl(weightKg, percent));
        assertTrue(DOSES.lidocaineMg(weightKg + 1, true) >= DOSES.lidocaineMg(weightKg, true));
    }
}
