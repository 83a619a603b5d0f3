package org.tunica.firmness;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.physics.Derived;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.Planner;
import org.tunica.plan.RankingFirmness;
import org.tunica.plan.Reason;
import org.tunica.plan.SegmentAdvice;
import org.tunica.rules.Considered;
import org.tunica.rules.RankingFacts;
import org.tunica.rules.RuleBook;

/** Asks the rules after the ranking whether a segment is one that colleagues should look at together. */
final class HardCase {
    private final Planner planner;
    private final RuleBook rules;

    HardCase(Planner planner, RuleBook rules) {
        this.planner = planner;
        this.rules = rules;
    }

    /** The signs, also those in doubt, in the order of their ids. */
    List<Reason> signs(Situation measured, Derived derived, SegmentAdvice advice) {
        // the rules ask nothing that differs from option to option, so the first stands for the segment
        Considered any = planner.considered(measured.caseFile(), measured.limb(), measured.segment(), derived)
                .get(0);
        return rules.signs(List.of(rules.facts(any, facts(advice)))).stream()
                .map(verdict -> Reason.of(verdict, Reason.Stands.CALLS_THE_MEETING))
                .toList();
    }

    private static Optional<String> word(RankingFirmness.State state) {
        return state == RankingFirmness.State.NOT_COMPUTED ? Optional.empty() : Optional.of(state.word());
    }

    private static RankingFacts facts(SegmentAdvice advice) {
        OptionAdvice best = advice.options().get(0);
        return new RankingFacts(
                word(advice.ranking().state()),
                word(advice.ranking().familyState()),
                Optional.of(best.standing().word()),
                OptionalDouble.of(advice.options().stream()
                        .filter(option -> option.standing().ranked())
                        .count()),
                OptionalDouble.of(advice.nearMisses().stream()
                        .filter(miss ->
                                best.standing().ranked() && miss.techniques().contains(best.technique()))
                        .count()),
                Optional.of(best.standing().ranked() ? best.family().word() : "none"));
    }
}
