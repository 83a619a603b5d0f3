package org.tunica.outcomes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tunica.outcomes.Past.closed;
import static org.tunica.outcomes.Past.open;
import static org.tunica.outcomes.Past.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.pastcases.EachCase;
import org.tunica.pastcases.PastCase;
import org.tunica.statistics.CusumSide;
import org.tunica.statistics.Funnel;
import org.tunica.statistics.FunnelPlace;

/** Bases made by hand or drawn with a fixed seed; nobody was ever treated like this. */
class AuditorTest {
    private static final Auditor AUDITOR = new Auditor(Past.KNOWLEDGE, 1);

    /** Mean of the four shares of knowledge/rates.yaml for laser of the great saphenous vein: 0.913, 0.75, 0.97, 0.942. */
    private static final double LASER_FAILS = 1 - (0.913 + 0.75 + 0.97 + 0.942) / 4;

    private final List<PastCase> base = new ArrayList<>();

    @Test
    void bySiteAndYear_countedOnPaper() {
        add(10, "site-a", 2023, closed(365));
        add(2, "site-a", 2023, open(365));
        add(12, "site-b", 2024, closed(365));
        add(6, "site-b", 2024, open(365));
        AuditedTechnique laser = audit().techniques().get(0);
        assertEquals(
                List.of("site-a", "site-b"),
                laser.bySite().rows().stream().map(Split.Row::name).toList());
        assertEquals(
                List.of(Counted.told(10, 12, 0.95), Counted.told(12, 18, 0.95)),
                laser.bySite().rows().stream()
                        .map(row -> row.closed().get(3).closed())
                        .toList());
        assertEquals(
                List.of("2023", "2024"),
                laser.byYear().rows().stream().map(Split.Row::name).toList());
        Funnel funnel = laser.bySite().funnel().orElseThrow();
        assertEquals(8.0 / 30, funnel.targetShare());
        assertEquals(
                List.of(2, 6),
                funnel.points().stream().map(point -> point.group().events()).toList());
        assertEquals(
                List.of(FunnelPlace.WITHIN, FunnelPlace.WITHIN),
                funnel.points().stream().map(point -> point.place()).toList());
    }

    @Test
    void aSmallSite_isHidden_andTheNextSmallestWithIt() {
        add(20, "site-a", 2023, closed(365));
        add(8, "site-b", 2023, closed(365));
        add(3, "site-c", 2023, open(365));
        Split split = audit().techniques().get(0).bySite();
        assertEquals(
                List.of(Counted.told(20, 20, 0.95), Counted.withheld(), Counted.fewerThan(5)),
                split.rows().stream().map(row -> row.closed().get(3).closed()).toList());
        assertFalse(split.funnel().isPresent());
    }

    @Test
    void predictedFailures_areThoseOfPublishedRates() {
        add(40, "site-a", 2023, closed(365));
        add(5, "site-a", 2023, open(365));
        add(5, "site-a", 2023, open(42));
        Watch watch = audit().techniques().get(0).watch().orElseThrow();
        assertEquals(45, watch.chart().points().size(), "who was not seen at one year is not on the chart");
        assertEquals(5, watch.failed());
        assertEquals(45 * LASER_FAILS, watch.predictedFailures(), 1e-9);
        assertEquals(4, watch.rates().size());
        assertTrue(
                audit().techniques()
                        .get(0)
                        .remarks()
                        .get(0)
                        .contains("5 of 50; of these were seen open or treated again at" + " another time: 5 of 5"),
                () -> audit().techniques().get(0).remarks().toString());
    }

    @Test
    void aBadPeriod_signals_whereItWasPlanted() {
        drawn(150, 2020, LASER_FAILS, 11);
        drawn(150, 2022, 3 * LASER_FAILS, 12);
        List<Watch.Signal> signals =
                audit().techniques().get(0).watch().orElseThrow().signals();
        assertEquals(CusumSide.WORSE, signals.get(0).side());
        assertEquals(2022, signals.get(0).year());
        assertEquals(2022, signals.get(0).sinceYear());
    }

    @Test
    void resultsAsPublished_stayQuiet_onAllButFewCharts() {
        int spoke = 0;
        for (int seed = 0; seed < 40; seed++) {
            base.clear();
            drawn(100, 2022, LASER_FAILS, 100 + seed);
            boolean worse = audit().techniques().get(0).watch().orElseThrow().signals().stream()
                    .anyMatch(signal -> signal.side() == CusumSide.WORSE);
            spoke += worse ? 1 : 0;
        }
        // 40 charts at 0.05 each: two expected; seven or more come once in 300 times (binomial)
        assertTrue(spoke < 7, spoke + " of 40 charts spoke for nothing");
    }

    @Test
    void theOrderIsThatOfTheYears_whateverTheOrderOfTheBase() {
        add(20, "site-a", 2024, open(365));
        add(30, "site-a", 2021, closed(365));
        Watch watch = audit().techniques().get(0).watch().orElseThrow();
        assertFalse(watch.chart().points().get(0).outcome().failed());
        assertTrue(watch.chart().points().get(49).outcome().failed());
    }

    @Test
    void aTechniqueWithoutAPublishedRate_isCountedAndSaidToBeUnwatched() {
        for (int i = 0; i < 12; i++) {
            base.add(Past.number(i)
                    .with("VEIN", "tributary")
                    .technique("foam-polidocanol")
                    .seen(closed(365)));
        }
        AuditedTechnique foam = audit().techniques().get(0);
        assertEquals(Counted.told(12, 12, 0.95), foam.outcome().closed().get(3).closed());
        assertEquals(Optional.empty(), foam.watch());
        assertTrue(foam.remarks().get(0).startsWith("Not watched"));
        assertTrue(foam.remarks().get(1).contains("in: tributary (12 of 12)"), foam.remarks()::toString);
    }

    @Test
    void curvesAreCompared_onlyUnderOneDefinition() {
        List<String> two = List.of("laser-1470-radial", "adhesive");
        add(15, "site-a", 2023, closed(365));
        for (int i = 0; i < 15; i++) {
            base.add(Past.number(200 + i).technique("adhesive").seen(closed(7), i < 5 ? open(42) : closed(365)));
        }
        Compared compared = compare(two).compared().get(0);
        assertEquals(0, compared.logRank().orElseThrow().first().observed());
        assertEquals(5, compared.logRank().orElseThrow().second().observed());
        base.subList(15, 30).clear();
        for (int i = 0; i < 15; i++) {
            base.add(Past.number(200 + i)
                    .technique("adhesive")
                    .with("CLOSURE", "mechanochemical-open-part")
                    .seen(closed(365)));
        }
        assertEquals(Optional.empty(), compare(two).compared().get(0).logRank());
        assertTrue(compare(two).compared().get(0).says().contains("different definitions"));
        base.subList(15, 30).clear();
        assertTrue(compare(two).compared().get(0).says().contains("too few"));
    }

    @Test
    void whatIsAskedFor_isLookedAtAlone() {
        add(10, "site-a", 2021, closed(365));
        add(10, "site-b", 2022, closed(365));
        base.add(Past.number(900).with("YEAR", "").seen(closed(365)));
        AuditQuestion later = new AuditQuestion(
                Optional.of("site-b"), Optional.empty(), OptionalInt.of(2022), OptionalInt.empty(), List.of());
        assertEquals(OptionalInt.of(10), AUDITOR.audit(base::forEach, later).segments());
        assertEquals(Counted.fewerThan(5, 21), audit().withoutYear());
        AuditQuestion nowhere = new AuditQuestion(
                Optional.of("site-z"), Optional.empty(), OptionalInt.empty(), OptionalInt.empty(), List.of());
        assertEquals(List.of(), AUDITOR.audit(base::forEach, nowhere).techniques());
    }

    @Test
    void whatCannotBeAsked_isRefusedAtOnce() {
        AuditQuestion wrong = new AuditQuestion(
                Optional.empty(),
                Optional.of("laser-1470-radiale"),
                OptionalInt.of(2024),
                OptionalInt.of(2020),
                List.of("adhesive"));
        FaultyInput refused = assertThrows(FaultyInput.class, () -> AUDITOR.audit(base::forEach, wrong));
        assertEquals(
                List.of("technique", "compare", "compare", "from"),
                refused.faults().stream().map(Fault::place).toList());
        assertTrue(refused.getMessage().contains("did you mean \"laser-1470-radial\"?"));
    }

    @Test
    void noFollowUpAtAll_isSaid() {
        add(9, "site-a", 2023, visit(7, ""));
        AuditedTechnique laser = audit().techniques().get(0);
        assertEquals(Optional.empty(), laser.outcome().staying());
        assertEquals(Optional.empty(), laser.watch());
        assertEquals(List.of(), AUDITOR.audit(EachCase.NONE, AuditQuestion.ALL).techniques());
    }

    private void add(int count, String site, int year, String... visits) {
        for (int i = 0; i < count; i++) {
            base.add(Past.number(base.size())
                    .with("SITE", site)
                    .with("YEAR", "\"year\":" + year + ",")
                    .seen(visits));
        }
    }

    private void drawn(int count, int year, double fails, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < count; i++) {
            add(1, "site-a", year, random.nextDouble() < fails ? open(365) : closed(365));
        }
    }

    private Audit audit() {
        return AUDITOR.audit(base::forEach, AuditQuestion.ALL);
    }

    private Audit compare(List<String> techniques) {
        return AUDITOR.audit(
                base::forEach,
                new AuditQuestion(
                        Optional.empty(), Optional.empty(), OptionalInt.empty(), OptionalInt.empty(), techniques));
    }
}
