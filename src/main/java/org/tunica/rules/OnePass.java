package org.tunica.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The rules over an option in one pass of plain Java, for the very many options of a replay. The engine stays what advises: a
 * test holds the two against each other, and a replay lets the engine judge a part of its cases again.
 *
 * <p>A verdict rests on the facts of its option and on verdicts of earlier stages alone, and the order of rules is the order
 * of stages; so one pass in that order finds what the engine finds.
 */
final class OnePass {
    private final List<Step> steps;

    /** A rule with its conditions at hand. */
    private record Step(Rule rule, String fact, Condition.OnOption[] own, Condition.OnVerdicts[] earlier) {
        static Step of(Rule rule) {
            return new Step(
                    rule,
                    EarlierVerdict.factOf(rule),
                    rule.onOption().toArray(Condition.OnOption[]::new),
                    rule.onVerdicts().toArray(Condition.OnVerdicts[]::new));
        }

        boolean matches(Candidate candidate) {
            for (Condition.OnOption condition : own) {
                if (condition.truth(candidate.facts()) == Truth.FALSE) {
                    return false;
                }
            }
            for (Condition.OnVerdicts condition : earlier) {
                if (!candidate.leavesOpen(condition)) {
                    return false;
                }
            }
            return true;
        }
    }

    /** How many of the steps come before the stage of cautions. */
    private final int barring;

    OnePass(List<Rule> rules) {
        this.steps = rules.stream().sorted(Verdict.ORDER_OF_RULES).map(Step::of).toList();
        this.barring = (int) steps.stream()
                .filter(step -> step.rule().conclusion().kind().stage() < Conclusion.Kind.CAUTION.stage())
                .count();
    }

    /** All verdicts, in the order in which the engine tells them. */
    List<Verdict> judge(Collection<OptionFacts> options) {
        List<Verdict> verdicts = new ArrayList<>();
        options.stream().sorted(Comparator.comparing(OptionFacts::key)).forEach(facts -> {
            Candidate candidate = new Candidate(facts);
            run(steps, candidate);
            verdicts.addAll(candidate.verdicts());
        });
        return verdicts;
    }

    /** The verdicts on an option, unless one of the first two stages bars it or holds it back, be it in doubt. */
    Optional<List<Verdict>> judgeUnlessBarred(OptionFacts facts) {
        Candidate candidate = new Candidate(facts);
        run(steps.subList(0, barring), candidate);
        if (candidate.verdicts().stream().anyMatch(verdict -> verdict.kind() != Conclusion.Kind.FIND)) {
            return Optional.empty();
        }
        run(steps.subList(barring, steps.size()), candidate);
        return Optional.of(candidate.verdicts());
    }

    private static void run(List<Step> steps, Candidate candidate) {
        for (Step step : steps) {
            if (step.matches(candidate)) {
                candidate.note(step.fact(), candidate.take(step.rule()));
            }
        }
    }
}
