package org.tunica.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Arithmetic of heat death and thermal dose, evaluated in closed form. */
class DamageRateTest {
    private final TissueConstants tissue = HeatKnowledge.constants().tissue();

    @ParameterizedTest
    @CsvSource({
        // A 1/s, E J/mol, ln A, lethal C in 0.1 1 5 10 60 s, rate 1/s at 60 70 80 C
        "5.6e63, 4.30e5, 146.7856274564, 84.795900, 79.180903, 75.359653, 73.739347, 69.619898, 2.13667231e-04, 1.96984116e-02, 1.40558692e+00",
        "7.39e39, 2.577e5, 91.8009463617, 73.160094, 64.473817, 58.656642, 56.212622, 50.058633, 2.91481170e-01, 4.38587004e+00, 5.66002788e+01",
        // Epidermis, classic constants (from memory), for comparison only
        "3.1e98, 6.28e5, 226.7847412249, 63.317897, 59.901680, 57.554746, 56.554136, 53.995435, 1.06922012e+00, 7.91467582e+02, 4.02993349e+05"
    })
    void closedForms(
            double a,
            double e,
            double lnA,
            double c01,
            double c1,
            double c5,
            double c10,
            double c60,
            double at60,
            double at70,
            double at80) {
        DamageRate rate = new DamageRate(a, e);
        assertEquals(lnA, rate.lnFrequency(), 1e-9);
        double[] seconds = {0.1, 1, 5, 10, 60};
        double[] lethal = {c01, c1, c5, c10, c60};
        for (int i = 0; i < seconds.length; i++) {
            assertEquals(lethal[i], rate.lethalC(seconds[i]), 5e-7);
            assertEquals(1, seconds[i] * rate.perS(rate.lethalC(seconds[i])), 1e-9);
        }
        assertEquals(at60, rate.perS(60), 5e-9 * at60);
        assertEquals(at70, rate.perS(70), 5e-9 * at70);
        assertEquals(at80, rate.perS(80), 5e-9 * at80);
    }

    @Test
    void constantsOfKnowledge() {
        assertEquals(146.7856274564, tissue.necrosis().lnFrequency(), 1e-9);
        assertEquals(91.8009463617, tissue.delayed().lnFrequency(), 1e-9);
    }

    @Test
    void table_followsTheRate() {
        double worst = 0;
        for (DamageRate rate : new DamageRate[] {tissue.necrosis(), tissue.delayed()}) {
            RateTable table = new RateTable(rate, tissue.damageFloorC());
            for (double c = tissue.damageFloorC(); c < 400; c += 0.0137) {
                worst = Math.max(worst, Math.abs(table.perS(c) / rate.perS(c) - 1));
            }
        }
        assertTrue(worst > 1e-5 && worst < 3.5e-4, "worst relative error " + worst);
    }

    @Test
    void thermalDose_closedForms() {
        // Definition of CEM43: Int J Radiat Oncol Biol Phys 1984;10:787 (from memory).
        ThermalDose dose = tissue.dose();
        assertEquals(21.3333333333, dose.minutes(50, 10), 1e-9);
        assertEquals(4.0, dose.minutes(45, 60), 1e-9);
        assertEquals(2.5, dose.minutes(42, 600), 1e-9);
        assertEquals(2184.53333333, dose.minutes(60, 1), 1e-8);
        assertEquals(0, dose.minutes(38.999, 1e6));
    }

    @Test
    void thermalDose_ramp() {
        // 43 to 53 C in 10 s: (2^10 - 1)/(60 ln 2) minutes.
        int steps = 200_000;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            sum += tissue.dose().minutes(43 + 10 * (i + 0.5) / steps, 10.0 / steps);
        }
        assertEquals(24.5979504472, sum, 1e-8);
    }
}
