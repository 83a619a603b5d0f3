package org.tunica.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.GlossaryField;
import org.tunica.knowledge.Knowledge;
import org.tunica.rules.Answer;
import org.tunica.rules.Rule;
import org.tunica.rules.RuleBook;

/** Every boundary of every shipped rule, run through the engine. */
class ProbesTest {
    private static final Bundle SHIPPED = Bundle.shipped();
    private static final Knowledge KNOWLEDGE = Knowledge.of(SHIPPED);
    private static final RuleBook RULES = RuleBook.of(SHIPPED, KNOWLEDGE);
    private static final RuleReview REVIEW = RuleReview.of(SHIPPED, KNOWLEDGE, RULES);

    @Test
    void theEngineSaysAtEveryBoundaryWhatTheWordsOfTheRuleMean() {
        List<Probe.Outcome> outcomes = REVIEW.probed();
        List<Probe.Outcome> wrong =
                outcomes.stream().filter(outcome -> !outcome.asExpected()).toList();
        assertEquals(List.of(), wrong);
        assertTrue(outcomes.size() > 3 * RULES.rules().size(), outcomes.size() + " probes");
    }

    @Test
    void everyRuleIsSeenToSpeakAndToStayQuiet() {
        Set<String> ids = RULES.rules().stream().map(Rule::id).collect(Collectors.toSet());
        assertEquals(ids, rulesExpectedTo(Probe.Says.SPEAKS));
        assertEquals(ids, rulesExpectedTo(Probe.Says.STAYS_QUIET));
    }

    @Test
    void whatCannotBeProbedHasAReason() {
        Set<String> remarked = REVIEW.remarks().stream()
                .filter(remark -> remark.kind() == Remark.Kind.ALWAYS_TRUE)
                .flatMap(remark -> remark.rules().stream())
                .collect(Collectors.toSet());
        Set<String> unbroken = REVIEW.unprobed().stream()
                .filter(unprobed -> unprobed.what().startsWith("not: "))
                .map(Probe.Unprobed::rule)
                .collect(Collectors.toSet());
        assertEquals(remarked, unbroken);
    }

    @Test
    void everyNumberThatIsEnteredHasTheRangeInWhichItIsBelieved() {
        FactSpace space = new FactSpace(KNOWLEDGE, RULES.rules());
        assertEquals(
                List.of("patient.bodyMassIndex"),
                space.fields().stream()
                        .filter(field -> field.kind() == GlossaryField.Kind.NUMBER)
                        .map(GlossaryField::id)
                        .filter(id -> !id.matches("(derived|ranking)\\..*")
                                && space.measured(id).isEmpty())
                        .toList());
    }

    @Test
    void aNumberIsPutAsNearToItsLimitAsNumbersGo() {
        String rule =
                "EXC-901 | exclude | the technique works by heat | the depth to the skin is less than limit plant.four";
        List<Probe> probes = Plant.review(rule).probes();
        assertEquals(
                List.of("just below 4 mm speaks", "exactly 4 mm stays quiet", "just above 4 mm stays quiet"),
                probes.stream()
                        .filter(probe -> probe.what().startsWith("the depth to the skin "))
                        .map(probe -> probe.what().replace("the depth to the skin ", "") + " "
                                + probe.expected().words())
                        .toList());
        assertTrue(probes.stream()
                .anyMatch(probe -> probe.facts().contains("the depth to the skin: just below 4 mm")
                        && probe.option()
                                .answer(KNOWLEDGE.glossary().fields().get("segment.depthToSkinMm"))
                                .equals(new Answer.Number(Math.nextDown(4.0)))));
    }

    @Test
    void aBandAndAnotherSegmentHaveTheirEdgesToo() {
        String band =
                "PRE-901 | prefer slightly | the lumen diameter is not between limit plant.two and limit plant.four";
        String other =
                "PRE-902 | prefer slightly | in no other segment of this leg the lumen diameter is at most limit plant.two";
        List<Probe.Outcome> outcomes = Plant.review(band, other).probed();
        assertEquals(
                List.of(),
                outcomes.stream().filter(outcome -> !outcome.asExpected()).toList());
        assertEquals(
                List.of("speaks", "stays quiet", "stays quiet", "stays quiet", "stays quiet", "speaks"),
                edges(outcomes, "PRE-901"));
        assertEquals(List.of("stays quiet", "stays quiet", "speaks"), edges(outcomes, "PRE-902"));
    }

    private static List<String> edges(List<Probe.Outcome> outcomes, String rule) {
        return outcomes.stream()
                .filter(outcome -> outcome.probe().rule().equals(rule))
                .filter(outcome -> outcome.probe().what().matches(".*(just|exactly).*"))
                .map(outcome -> outcome.said().words())
                .toList();
    }

    private static Set<String> rulesExpectedTo(Probe.Says says) {
        return REVIEW.probes().stream()
                .filter(probe -> probe.expected() == says)
                .map(Probe::rule)
                .collect(Collectors.toSet());
    }
}
