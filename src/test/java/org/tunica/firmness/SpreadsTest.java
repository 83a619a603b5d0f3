package org.tunica.firmness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The spreads that values are drawn from. */
class SpreadsTest {
    /** The mean of Beta(k + 1, n - k + 1) is (k + 1) / (n + 2); by hand. */
    @Test
    void aRateOfFewHasTheMeanOfItsBeta() {
        assertEquals(64.0 / 71, Quantiles.of(Quantiles.beta(63, 6)).mean(), 0.001);
        assertEquals(2.0 / 31, Quantiles.of(Quantiles.beta(1, 28)).mean(), 0.001);
        assertEquals(0.5, Quantiles.open().mean(), 0.001);
    }

    /** Half of Beta(2, 1) lies below the root of a half: its distribution is the square. */
    @Test
    void quantilesAreThoseOfTheDistribution() {
        Quantiles square = Quantiles.of(Quantiles.beta(1, 0));
        for (double probability : new double[] {0.1, 0.25, 0.5, 0.9}) {
            assertEquals(Math.sqrt(probability), square.at(probability), 0.002);
        }
    }

    @Test
    void moreTreatedIsLessSpread() {
        Quantiles few = Quantiles.of(Quantiles.beta(9, 1));
        Quantiles many = Quantiles.of(Quantiles.beta(900, 100));
        assertTrue(few.at(0.9) - few.at(0.1) > 5 * (many.at(0.9) - many.at(0.1)));
    }

    @Test
    void aMarginFallsWithWarmth_andNothingWarmedKeepsItWhole() {
        Margin margin = new Margin(40, 42, 46, 37, 50);
        assertEquals((50 - 42.0) / 13, margin.at(0.5), 1e-9);
        assertEquals((50 - 40.0) / 13, margin.at(0.1), 1e-9);
        assertEquals((50 - 46.0) / 13, margin.at(0.9), 1e-9);
        assertEquals(1, Margin.FULL.at(0.99));
        assertEquals(0, Margin.NONE.at(0.01));
    }
}
