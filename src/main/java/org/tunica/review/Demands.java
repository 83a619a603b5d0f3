package org.tunica.review;

import java.util.List;
import org.tunica.rules.Answer;
import org.tunica.rules.Conclusion;
import org.tunica.rules.Condition;
import org.tunica.rules.Rule;

/**
 * Turns "this rule speaks", "that condition cannot be told" and the like into demands on facts, three-valued as the
 * engine is. What rests on earlier stages is followed down to the rules of those stages.
 */
final class Demands {
    private final FactSpace space;
    private final List<Rule> rules;

    Demands(FactSpace space, List<Rule> rules) {
        this.space = space;
        this.rules = rules;
    }

    Demand of(Rule rule, Wish wish) {
        return of(rule.conditions(), wish);
    }

    /** A demand on the conjunction of conditions: for a conjunction all must hold, and one spoils it. */
    Demand of(List<? extends Condition> conditions, Wish wish) {
        List<Demand> parts =
                conditions.stream().map(condition -> of(condition, wish)).toList();
        return wish.oneIsEnough() ? new Demand.All(parts) : new Demand.Any(parts);
    }

    Demand of(Condition condition, Wish wish) {
        if (condition instanceof Condition.OnVerdicts earlier) {
            return earlier(earlier, earlier.wanted() ? wish : wish.ofDenial());
        }
        if (condition instanceof Condition.Elsewhere elsewhere) {
            return elsewhere(elsewhere, elsewhere.wanted() ? wish : wish.ofDenial());
        }
        if (condition instanceof Condition.AnyOf set && space.freeSet(set.field())) {
            return set(set, set.any() ? wish : wish.ofDenial());
        }
        return fits((Condition.OnOption) condition, wish);
    }

    private Demand.Fits fits(Condition.OnOption condition, Wish wish) {
        Variable variable = space.variable(condition.field().id());
        return new Demand.Fits(variable, variable.where(book -> wish.accepts(condition.truth(book))));
    }

    private Demand earlier(Condition.OnVerdicts condition, Wish wish) {
        List<Demand> said = rules.stream()
                .filter(rule -> says(rule.conclusion(), condition))
                .map(rule -> of(rule, wish))
                .toList();
        return wish.oneIsEnough() ? new Demand.Any(said) : new Demand.All(said);
    }

    /** Whether a rule of this conclusion is what a condition on earlier stages asks for. */
    static boolean says(Conclusion conclusion, Condition.OnVerdicts condition) {
        if (condition instanceof Condition.Found found) {
            return conclusion instanceof Conclusion.Find find && find.finding().equals(found.finding());
        }
        return conclusion.kind() == ((Condition.Earlier) condition).kind();
    }

    private Demand elsewhere(Condition.Elsewhere condition, Wish wish) {
        Demand.Fits fits = fits(condition.condition(), wish);
        return wish.oneIsEnough() ? new Demand.Somewhere(fits) : new Demand.Everywhere(fits);
    }

    private Demand set(Condition.AnyOf condition, Wish wish) {
        Variable recorded = space.variable(condition.field().id());
        Demand.Fits missing = new Demand.Fits(recorded, recorded.answering(Answer.UNKNOWN));
        return switch (wish) {
            case TRUE -> new Demand.All(List.of(present(recorded), new Demand.Any(members(condition, true))));
            case FALSE -> new Demand.All(List.of(present(recorded), new Demand.All(members(condition, false))));
            case NOT_TRUE -> new Demand.Any(List.of(missing, set(condition, Wish.FALSE)));
            case NOT_FALSE -> new Demand.Any(List.of(missing, set(condition, Wish.TRUE)));
        };
    }

    private static Demand.Fits present(Variable recorded) {
        return new Demand.Fits(recorded, recorded.where(cell -> !cell.unknown()));
    }

    private List<Demand> members(Condition.AnyOf condition, boolean held) {
        return condition.words().stream()
                .map(word -> space.member(condition.field().id(), word))
                .<Demand>map(member -> new Demand.Fits(member, member.answering(new Answer.Flag(held))))
                .toList();
    }
}
