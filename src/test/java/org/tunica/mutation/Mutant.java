package org.tunica.mutation;

import java.util.List;
import org.tunica.features.Engine;
import org.tunica.knowledge.Knowledge;
import org.tunica.physics.Physics;
import org.tunica.rules.Rule;

/**
 * The shipped rules with one thing wrong.
 *
 * @param about ids of the rules it bears on: the one changed, or those that name the limit
 * @param what what was done, in words
 * @param rules all rules, the mutated ones in their place
 * @param knowledge the knowledge, with the mutated limit if it is one
 */
record Mutant(List<String> about, String what, List<Rule> rules, Knowledge knowledge) {
    /**
     * The engine it makes. The computed models stay those shipped: a mutant is wrong in what rules read, so that only
     * they are under test.
     *
     * @throws org.tunica.casefile.FaultyInput when the mutant would be refused at the start
     */
    Engine engine(Physics physics) {
        return Engine.of(knowledge, physics, PrintedRules.book(rules, knowledge));
    }

    /** A name that is the same in every run. */
    String name() {
        return String.join(" ", about) + ": " + what;
    }
}
