package org.tunica.review;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.tunica.knowledge.Knowledge;
import org.tunica.rules.Condition;
import org.tunica.rules.Rule;

/** What follows from what in a set of rules, found by search over everything an option can be. */
final class Reasoning {
    private final FactSpace space;
    private final Demands demands;
    private final List<Rule> rules;

    Reasoning(Knowledge knowledge, List<Rule> rules) {
        this.rules = rules;
        this.space = new FactSpace(knowledge, rules);
        this.demands = new Demands(space, rules);
    }

    FactSpace space() {
        return space;
    }

    Demands demands() {
        return demands;
    }

    List<Rule> rules() {
        return rules;
    }

    static Optional<Search.Found> find(Demand... demands) {
        return Search.find(List.of(demands));
    }

    static boolean possible(Demand... demands) {
        return find(demands).isPresent();
    }

    boolean canSpeak(Rule rule) {
        return possible(demands.of(rule, Wish.TRUE));
    }

    boolean canSpeakTogether(Rule a, Rule b) {
        return possible(demands.of(a, Wish.TRUE), demands.of(b, Wish.TRUE));
    }

    /** Whether b speaks wherever a does, and is at least in doubt wherever a is. */
    boolean implies(Rule a, Rule b) {
        return speaksWherever(a, b) && !possible(demands.of(a, Wish.NOT_FALSE), demands.of(b, Wish.FALSE));
    }

    /** Whether b speaks wherever a does. */
    boolean speaksWherever(Rule a, Rule b) {
        return !possible(demands.of(a, Wish.TRUE), demands.of(b, Wish.NOT_TRUE));
    }

    /** Whether a condition holds wherever all of some others do. */
    boolean follows(Condition condition, List<Condition> from) {
        return !possible(demands.of(from, Wish.TRUE), demands.of(condition, Wish.NOT_TRUE));
    }

    /** The cells of a variable at which demands can be met. */
    BitSet cells(Variable variable, Demand... wanted) {
        BitSet possible = new BitSet();
        for (int cell = 0; cell < variable.cells().size(); cell++) {
            if (possible(new Demand.All(List.of(wanted)), at(variable, cell))) {
                possible.set(cell);
            }
        }
        return possible;
    }

    static Demand.Fits at(Variable variable, int cell) {
        BitSet only = new BitSet();
        only.set(cell);
        return new Demand.Fits(variable, only);
    }
}
