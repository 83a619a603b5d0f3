package org.tunica.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ManyLooksTest {
    private static final ManyLooks MONTHLY = new ManyLooks(0.05, 12);

    /** The usual example of Holm's steps, four chances; worked by hand: 4 x 0.005, 3 x 0.01, 2 x 0.03, then 0.04 raised. */
    @Test
    void chances_areRaisedStepByStep() {
        List<Double> adjusted = MONTHLY.adjusted(List.of(0.01, 0.04, 0.03, 0.005));
        List<Double> byHand = List.of(0.03, 0.06, 0.06, 0.02);
        for (int i = 0; i < byHand.size(); i++) {
            assertEquals(byHand.get(i), adjusted.get(i), 1e-12);
        }
    }

    @Test
    void aLook_hasOnlyItsPartOfTheYear() {
        assertEquals(0.05 / 12, MONTHLY.shareOfOneLook(), 1e-15);
        assertTrue(MONTHLY.speaks(0.004));
        assertFalse(MONTHLY.speaks(0.005));
    }

    /** A year without any change, 2,000 times, twenty rules a look: fixed seed. */
    @Test
    void withoutAChange_aYearRarelyRaisesAnAlarm() {
        Random random = new Random(7);
        int years = 2_000;
        int alarmed = 0;
        for (int year = 0; year < years; year++) {
            boolean any = false;
            for (int look = 0; look < MONTHLY.looksPerYear(); look++) {
                any |= MONTHLY.adjusted(evenChances(random)).stream().anyMatch(MONTHLY::speaks);
            }
            alarmed += any ? 1 : 0;
        }
        double share = (double) alarmed / years;
        assertTrue(share < 0.065 && share > 0.035, "of years alarmed: " + share);
    }

    private static List<Double> evenChances(Random random) {
        List<Double> chances = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            chances.add(random.nextDouble());
        }
        return chances;
    }
}
