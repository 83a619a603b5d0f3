package org.tunica.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FunnelTest {
    @Test
    void documentationExample_fourPlaces() {
        Funnel funnel = Funnel.against(
                0.1,
                List.of(
                        new FunnelGroup("north", 10, 100),
                        new FunnelGroup("east", 17, 100),
                        new FunnelGroup("south", 61, 400),
                        new FunnelGroup("west", 28, 400)));
        assertEquals(
                List.of(FunnelPlace.WITHIN, FunnelPlace.ABOVE_INNER, FunnelPlace.ABOVE_OUTER, FunnelPlace.BELOW_INNER),
                funnel.points().stream().map(FunnelPoint::place).toList());
        assertEquals(3, funnel.outside().size());
    }

    /** Against R 4.2.2: qbinom(c(0.001, 0.025, 0.975, 0.999), n, p). */
    @ParameterizedTest
    @CsvSource({
        "0.1, 5, 0, 0, 2, 3",
        "0.1, 20, 0, 0, 5, 7",
        "0.1, 50, 0, 1, 9, 13",
        "0.1, 100, 2, 5, 16, 20",
        "0.1, 400, 23, 29, 52, 60",
        "0.93, 30, 23, 25, 30, 30",
        "0.93, 150, 129, 133, 145, 148"
    })
    void limits(double targetShare, int total, int lowOuter, int lowInner, int highInner, int highOuter) {
        Funnel funnel = Funnel.against(targetShare, List.of());
        FunnelLimits inner = funnel.limits(total, Funnel.INNER_SHARE);
        FunnelLimits outer = funnel.limits(total, Funnel.OUTER_SHARE);
        assertEquals(List.of(lowInner, highInner), List.of(inner.lowEvents(), inner.highEvents()));
        assertEquals(List.of(lowOuter, highOuter), List.of(outer.lowEvents(), outer.highEvents()));
    }

    @ParameterizedTest
    @CsvSource({
        "4, BELOW_INNER",
        "5, WITHIN",
        "16, WITHIN",
        "17, ABOVE_INNER",
        "20, ABOVE_INNER",
        "21, ABOVE_OUTER",
        "2, BELOW_INNER",
        "1, BELOW_OUTER"
    })
    void onALimit_isWithinIt(int events, FunnelPlace place) {
        Funnel funnel = Funnel.against(0.1, List.of(new FunnelGroup("one", events, 100)));
        assertEquals(place, funnel.points().get(0).place());
    }

    /** By the sum of the binomial terms themselves, one after the other. */
    @Property(seed = "20260101", tries = 300)
    void noMoreThanHalfOfWhatIsLeftOver_liesBeyondEitherLimit(
            @ForAll("shares") double targetShare, @ForAll @IntRange(min = 1, max = 200) int total) {
        FunnelLimits limits = Funnel.against(targetShare, List.of()).limits(total, 0.95);
        double below = 0;
        double above = 0;
        double term = Math.pow(1 - targetShare, total);
        for (int events = 0; events <= total; events++) {
            below += events < limits.lowEvents() ? term : 0;
            above += events > limits.highEvents() ? term : 0;
            term *= (double) (total - events) / (events + 1) * targetShare / (1 - targetShare);
        }
        assertTrue(below <= 0.025 + 1e-9, below + " below");
        assertTrue(above <= 0.025 + 1e-9, above + " above");
    }

    @Property(seed = "20260102", tries = 300)
    void outerLimits_holdTheInnerOnes(
            @ForAll("shares") double targetShare, @ForAll @IntRange(min = 1, max = 300) int total) {
        Funnel funnel = Funnel.against(targetShare, List.of());
        FunnelLimits inner = funnel.limits(total, Funnel.INNER_SHARE);
        FunnelLimits outer = funnel.limits(total, Funnel.OUTER_SHARE);
        assertTrue(outer.lowEvents() <= inner.lowEvents() && inner.highEvents() <= outer.highEvents());
    }

    @Provide
    Arbitrary<Double> shares() {
        return Arbitraries.doubles().between(0.02, 0.98);
    }

    @Test
    void noEventAtAll_orNothingElse_isWithin() {
        for (int events : new int[] {0, 20}) {
            Funnel funnel = Funnel.against(events / 20.0, List.of(new FunnelGroup("a", events, 20)));
            assertEquals(FunnelPlace.WITHIN, funnel.points().get(0).place());
        }
        assertEquals(
                1,
                Funnel.against(0, List.of(new FunnelGroup("a", 1, 20)))
                        .outside()
                        .size());
    }

    @Test
    void impossibleGroups_areRefused() {
        assertThrows(IllegalArgumentException.class, () -> new FunnelGroup("a", 3, 2));
        assertThrows(IllegalArgumentException.class, () -> new FunnelGroup("a", 0, 0));
        assertThrows(IllegalArgumentException.class, () -> Funnel.against(1.1, List.of()));
    }
}
