package org.tunica.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import org.junit.jupiter.api.Test;
import org.tunica.statistics.SharesApart.Counted;

class SharesApartTest {
    /** Fisher, The Design of Experiments, 1935: of eight cups, four with milk first; values from memory, and counted below. */
    @Test
    void theTastingOfTea_isAsFisherCountedIt() {
        assertEquals(2.0 / 70, apart(4, 4, 0, 4), 1e-12);
        assertEquals(34.0 / 70, apart(3, 4, 1, 4), 1e-12);
        assertEquals(1, apart(2, 4, 2, 4), 1e-12);
    }

    /** Against whole numbers of tables, counted one by one without the library. */
    @Test
    void chance_isTheShareOfTablesAtMostAsProbable() {
        for (int first = 0; first <= 9; first++) {
            for (int second = 0; second <= 13; second++) {
                assertEquals(counted(first, 9, second, 13), apart(first, 9, second, 13), 1e-10);
            }
        }
    }

    @Test
    void theOrderOfTheGroups_changesNothingButTheSign() {
        SharesApart one = SharesApart.of(new Counted(17, 40), new Counted(60, 200));
        SharesApart other = SharesApart.of(new Counted(60, 200), new Counted(17, 40));
        assertEquals(one.chanceProbability(), other.chanceProbability(), 1e-12);
        assertEquals(-one.differenceShare(), other.differenceShare(), 1e-15);
    }

    @Test
    void largeGroups_areStillExactAndNeverMoreThanOne() {
        assertTrue(apart(50_000, 100_000, 50_000, 100_000) <= 1);
        assertTrue(apart(51_000, 100_000, 50_000, 100_000) < 1e-4);
    }

    @Test
    void moreEventsThanCases_areRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Counted(5, 4));
        assertThrows(IllegalArgumentException.class, () -> new Counted(0, 0));
    }

    private static double apart(int first, int firstTotal, int second, int secondTotal) {
        return SharesApart.of(new Counted(first, firstTotal), new Counted(second, secondTotal))
                .chanceProbability();
    }

    private static double counted(int first, int firstTotal, int second, int secondTotal) {
        BigInteger seen = ways(firstTotal, first).multiply(ways(secondTotal, second));
        BigInteger sum = BigInteger.ZERO;
        for (int k = 0; k <= first + second; k++) {
            BigInteger tables = ways(firstTotal, k).multiply(ways(secondTotal, first + second - k));
            sum = tables.compareTo(seen) <= 0 ? sum.add(tables) : sum;
        }
        return new BigDecimal(sum)
                .divide(new BigDecimal(ways(firstTotal + secondTotal, first + second)), MathContext.DECIMAL64)
                .doubleValue();
    }

    private static BigInteger ways(int n, int k) {
        if (k < 0 || k > n) {
            return BigInteger.ZERO;
        }
        BigInteger ways = BigInteger.ONE;
        for (int i = 0; i < k; i++) {
            ways = ways.multiply(BigInteger.valueOf(n - i)).divide(BigInteger.valueOf(i + 1));
        }
        return ways;
    }
}
