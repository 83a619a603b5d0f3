package org.tunica.watching;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tunica.Tunica;

/** Invented cases and answers of an invented clinic. */
class WatchTest {
    private static final Instant TO = Instant.parse("2026-04-01T00:00:00Z");
    private static final LocalDate DAY = LocalDate.of(2026, 4, 1);
    private static final Stretches STRETCHES = Stretches.endingAt(TO, 30, 90);
    private static final Watch WATCH =
            new Watch(Tunica.shipped().knowledge(), Tunica.shipped().rules().rules());

    private final List<Heard> heard = new ArrayList<>();
    private final List<Answered> answered = new ArrayList<>();

    @Test
    void aRuleThatSuddenlySpeaksMoreOften_isToldFirst() {
        cases(10, 60, 60, "EXC-007");
        cases(70, 200, 20, "EXC-007");
        WatchReport report = report();
        assertEquals(60, report.casesNow());
        assertEquals(200, report.casesBefore());
        RuleRate first = report.rates().get(0);
        assertEquals("EXC-007", first.rule());
        assertEquals(RuleRate.Drift.MORE_OFTEN, first.drift());
        assertEquals(1, report.alarms().size());
    }

    @Test
    void aDifferenceTooSmallToMatter_isNotToldHoweverSure() {
        cases(10, 20_000, 1_900, "EXC-007");
        cases(70, 20_000, 400, "EXC-007");
        RuleRate rate = rate(report(), "EXC-007");
        assertTrue(rate.chanceProbability().orElseThrow() < 1e-6);
        assertEquals(RuleRate.Drift.STEADY, rate.drift());
    }

    @Test
    void aLargeDifferenceThatMayBeChance_isNotToldEither() {
        cases(10, 20, 10, "EXC-007");
        cases(70, 20, 6, "EXC-007");
        assertEquals(RuleRate.Drift.STEADY, rate(report(), "EXC-007").drift());
    }

    @Test
    void ofTooFewCases_nothingIsCompared() {
        cases(10, 19, 19, "EXC-007");
        cases(70, 200, 0, "EXC-007");
        RuleRate rate = rate(report(), "EXC-007");
        assertEquals(RuleRate.Drift.TOO_FEW_CASES, rate.drift());
        assertFalse(rate.chanceProbability().isPresent());
    }

    @Test
    void aCase_countsOnceByItsLastAdvice() {
        heard.add(new Heard("larkspur", TO.minus(Duration.ofDays(3)), "1.0.0", Set.of("EXC-007")));
        heard.add(new Heard("larkspur", TO.minus(Duration.ofDays(2)), "1.0.0", Set.of()));
        heard.add(new Heard("foxglove", TO.minus(Duration.ofDays(200)), "1.0.0", Set.of("EXC-007")));
        heard.add(new Heard("late", TO, "1.0.0", Set.of("EXC-007")));
        WatchReport report = report();
        assertEquals(1, report.casesNow());
        assertEquals(0, report.casesBefore());
        assertEquals(0, rate(report, "EXC-007").lately().events());
    }

    @Test
    void whatWasSetAside_isCountedWithItsReasonsAndWhatWasFoundLater() {
        answers(3, Answered.Answer.ACCEPTED, Optional.empty());
        answers(8, Answered.Answer.OVERRIDDEN, Optional.of(Answered.Found.APPROPRIATE));
        answers(1, Answered.Answer.OVERRIDDEN, Optional.of(Answered.Found.NOT_APPROPRIATE));
        answers(2, Answered.Answer.OVERRIDDEN, Optional.of(Answered.Found.CANNOT_TELL));
        AnswerRate rate = report().ofRules().get(0);
        assertEquals("EXC-007", rate.id());
        assertEquals(11, rate.overridden().events());
        assertEquals(14, rate.overridden().total());
        assertEquals(List.of(new AnswerRate.ReasonCount("patient-refuses", 11)), rate.reasons());
        assertEquals(9, rate.looked());
        assertEquals(8, rate.appropriate());
        assertEquals("laser-1470-radial", report().ofTechniques().get(0).id());
    }

    @Test
    void aRuleThatSpeaksOftenAndIsMostlySetAside_isNamed() {
        cases(10, 40, 20, "EXC-007");
        answers(2, Answered.Answer.ACCEPTED, Optional.empty());
        answers(7, Answered.Answer.OVERRIDDEN, Optional.empty());
        assertEquals(List.of(), report().oftenSetAside(), "nine cards are too few");
        answers(1, Answered.Answer.OVERRIDDEN, Optional.empty());
        assertEquals(List.of("EXC-007"), report().oftenSetAside());
    }

    @Test
    void reviews_areOverdueTheDayAfterTheirLast() {
        LocalDate last = LocalDate.of(2027, 5, 31);
        assertEquals(DueReview.Due.SOON, review(last).due());
        assertEquals(DueReview.Due.OVERDUE, review(last.plusDays(1)).due());
        assertEquals(DueReview.Due.SOON, review(last.minusDays(60)).due());
        assertTrue(
                reviews(last.minusDays(61)).stream().noneMatch(due -> due.id().equals("EXC-007")));
    }

    @Test
    void numbersNobodyChecked_areListedWithTheRulesTheyFeed() {
        UnverifiedNumber gap = report().unverified().stream()
                .filter(number -> number.id().equals("heat.skin-gap.min"))
                .findFirst()
                .orElseThrow();
        assertEquals("5 mm", gap.value());
        assertTrue(gap.rules().contains("EXC-007"));
    }

    @Test
    void theDocument_isTheSameBytesForTheSameLook() {
        cases(10, 60, 60, "EXC-007");
        answers(2, Answered.Answer.OVERRIDDEN, Optional.empty());
        assertEquals(report().toJson(), report().toJson());
        assertTrue(report().toJson().contains("\"format\" : \"tunica-watch/1\""));
    }

    /** So many cases some days before the end, of which in so many a rule spoke. */
    private void cases(int daysBefore, int count, int spoke, String rule) {
        for (int i = 0; i < count; i++) {
            Set<String> rules = i < spoke ? Set.of(rule) : Set.of();
            heard.add(new Heard("case-" + daysBefore + "-" + i, TO.minus(Duration.ofDays(daysBefore)), "1.0.0", rules));
        }
    }

    private void answers(int count, Answered.Answer answer, Optional<Answered.Found> found) {
        for (int i = 0; i < count; i++) {
            answered.add(new Answered(
                    Set.of("EXC-007"),
                    Optional.of("laser-1470-radial"),
                    answer,
                    answer == Answered.Answer.OVERRIDDEN ? Optional.of("patient-refuses") : Optional.empty(),
                    found));
        }
    }

    private WatchReport report() {
        return report(DAY);
    }

    private WatchReport report(LocalDate day) {
        Watch.Seen seen = new Watch.Seen("1.0.0", Optional.of(LocalDate.of(2030, 1, 1)), heard, answered);
        return WATCH.report(seen, STRETCHES, day);
    }

    private List<DueReview> reviews(LocalDate day) {
        return report(day).reviews();
    }

    private DueReview review(LocalDate day) {
        return reviews(day).stream()
                .filter(due -> due.id().equals("EXC-007"))
                .findFirst()
                .orElseThrow();
    }

    private static RuleRate rate(WatchReport report, String rule) {
        return report.rates().stream()
                .filter(rate -> rate.rule().equals(rule))
                .findFirst()
                .orElseThrow();
    }
}
