package org.tunica.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KaplanMeierTest {
    @Test
    void documentationExample_tableOfBewick() {
        KaplanMeier curve = KaplanMeier.of(Remissions.BEWICK, 0.95);
        assertEquals(8, curve.cases());
        assertEquals(6, curve.events());
        List<Integer> days = new ArrayList<>();
        List<Double> shares = new ArrayList<>();
        for (SurvivalStep step : curve.steps()) {
            if (step.events() > 0) {
                days.add(step.daysAfter());
                shares.add(Math.round(1000 * step.free().freeShare()) / 1000.0);
            }
        }
        // the column "Kaplan-Meier survival" of the cited table 2
        assertEquals(List.of(1, 4, 5, 9, 22), days);
        assertEquals(List.of(0.75, 0.625, 0.5, 0.333, 0.0), shares);
    }

    /**
     * Against R 4.2.2, survival 3.5.3: f <- survfit(Surv(t, s) ~ 1, conf.type = "log-log"), then time, n.risk, surv, surv *
     * std.err, lower, upper. Shares and Greenwood errors at 6 and 23 weeks are also printed in textbooks: 0.857, 0.448; 0.0764,
     * 0.1346.
     */
    @ParameterizedTest
    @CsvSource({
        "6, 21, 0.8571428571, 0.07636035483, 0.6197179553, 0.9515517476",
        "7, 17, 0.8067226891, 0.08693528518, 0.5631465646, 0.9228090192",
        "10, 15, 0.7529411765, 0.09634965299, 0.5031995108, 0.8893618352",
        "13, 12, 0.6901960784, 0.10681470778, 0.4316102225, 0.8490659633",
        "16, 11, 0.6274509804, 0.11405386526, 0.3675108560, 0.8049121895",
        "22, 7, 0.5378151261, 0.12823375169, 0.2677789368, 0.7467907176",
        "23, 6, 0.4481792717, 0.13459145676, 0.1880520060, 0.6801426285"
    })
    void treatedGroup(int week, int atRisk, double share, double error, double lowShare, double highShare) {
        SurvivalAt found = KaplanMeier.of(Remissions.TREATED, 0.95).at(week).orElseThrow();
        assertEquals(atRisk, found.atRisk());
        assertEquals(share, found.free().freeShare(), 1e-9);
        assertEquals(error, found.free().standardErrorShare().orElseThrow(), 1e-9);
        assertEquals(lowShare, found.free().lowShare().orElseThrow(), 1e-9);
        assertEquals(highShare, found.free().highShare().orElseThrow(), 1e-9);
    }

    /** Against R: summary(survfit(Surv(time, status) ~ x, aml, conf.type = "log-log"), times = c(10, 20, 30, 45)). */
    @ParameterizedTest
    @CsvSource({
        "10, 10, 0.909091, 0.5080802, 0.986674",
        "20, 7, 0.715909, 0.3501904, 0.899024",
        "30, 5, 0.613636, 0.2657520, 0.835299",
        "45, 3, 0.368182, 0.0928296, 0.657041"
    })
    void horizonsBetweenSteps(int day, int atRisk, double share, double lowShare, double highShare) {
        SurvivalAt found = KaplanMeier.of(Remissions.MAINTAINED, 0.95).at(day).orElseThrow();
        assertEquals(atRisk, found.atRisk());
        assertEquals(share, found.free().freeShare(), 5e-7);
        assertEquals(lowShare, found.free().lowShare().orElseThrow(), 5e-7);
        assertEquals(highShare, found.free().highShare().orElseThrow(), 5e-7);
    }

    /** Against R: print(survfit(...)) of the same groups. */
    @Test
    void medians() {
        assertEquals(
                new MedianTime(OptionalInt.of(23), OptionalInt.of(13), OptionalInt.empty()),
                KaplanMeier.of(Remissions.TREATED, 0.95).median());
        assertEquals(
                new MedianTime(OptionalInt.of(8), OptionalInt.of(4), OptionalInt.of(11)),
                KaplanMeier.of(Remissions.PLACEBO, 0.95).median());
        assertEquals(
                new MedianTime(OptionalInt.of(23), OptionalInt.of(5), OptionalInt.of(33)),
                KaplanMeier.of(Remissions.NOT_MAINTAINED, 0.95).median());
    }

    /** R takes the middle of the flat piece here, 7; the first day is the definition of the textbooks. */
    @Test
    void median_ofACurveThatRestsAtOneHalf_isTheDayItGotThere() {
        assertEquals(
                OptionalInt.of(5),
                KaplanMeier.of(Remissions.BEWICK, 0.95).median().daysAfter());
    }

    @Test
    void tie_eventsComeBeforeTheCensored() {
        KaplanMeier curve = KaplanMeier.of(Remissions.read("10 10+"), 0.95);
        assertEquals(0.5, curve.at(10).orElseThrow().free().freeShare());
        assertEquals(2, curve.at(10).orElseThrow().atRisk());
    }

    @Test
    void afterTheLastLook_nobodyKnows() {
        assertEquals(Optional.empty(), KaplanMeier.of(Remissions.TREATED, 0.95).at(36));
        SurvivalAt nobodyFree = KaplanMeier.of(Remissions.PLACEBO, 0.95).at(100).orElseThrow();
        assertEquals(0, nobodyFree.free().freeShare());
        assertEquals(0, nobodyFree.atRisk());
    }

    @Test
    void noEventYet_isNoCertainty() {
        FreeShare free = KaplanMeier.of(Remissions.read("30+ 365+"), 0.95)
                .at(200)
                .orElseThrow()
                .free();
        assertEquals(1, free.freeShare());
        assertEquals(OptionalDouble.empty(), free.lowShare());
        assertEquals(OptionalDouble.empty(), free.standardErrorShare());
    }

    @Property(seed = "20260101")
    void neverRisesAndStaysWithinItsLimits(@ForAll("followed") List<FollowedCase> followed) {
        KaplanMeier curve = KaplanMeier.of(followed, 0.95);
        double before = 1;
        int atRisk = followed.size();
        for (SurvivalStep step : curve.steps()) {
            FreeShare free = step.free();
            assertTrue(free.freeShare() <= before && free.freeShare() >= 0, curve::toString);
            assertEquals(atRisk, step.atRisk());
            assertTrue(free.lowShare().orElse(0) <= free.freeShare(), curve::toString);
            assertTrue(free.highShare().orElse(1) >= free.freeShare(), curve::toString);
            before = free.freeShare();
            atRisk -= step.events() + step.censored();
        }
        assertEquals(0, atRisk);
    }

    @Property(seed = "20260102")
    void nobodyCensored_givesPlainShares(@ForAll("followed") List<FollowedCase> followed, @ForAll("days") int day) {
        List<FollowedCase> seen = followed.stream()
                .map(one -> new FollowedCase(one.daysAfter(), true))
                .toList();
        double free = seen.stream().filter(one -> one.daysAfter() > day).count();
        double share = KaplanMeier.of(seen, 0.95).at(day).orElseThrow().free().freeShare();
        assertEquals(free / seen.size(), share, 1e-12);
    }

    @Property(seed = "20260103")
    void orderOfTheCases_doesNotMatter(@ForAll("followed") List<FollowedCase> followed) {
        List<FollowedCase> shuffled = new ArrayList<>(followed);
        Collections.shuffle(shuffled, new Random(7));
        assertEquals(KaplanMeier.of(followed, 0.95), KaplanMeier.of(shuffled, 0.95));
    }

    @Provide
    Arbitrary<Integer> days() {
        return Arbitraries.integers().between(0, 60);
    }

    @Provide
    Arbitrary<List<FollowedCase>> followed() {
        return Combinators.combine(days(), Arbitraries.of(true, false))
                .as(FollowedCase::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(40);
    }

    @Test
    void nothingFollowed_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> KaplanMeier.of(List.of(), 0.95));
        assertThrows(IllegalArgumentException.class, () -> new FollowedCase(-1, true));
    }
}
