package org.tunica.firmness;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tunica.physics.Derived;
import org.tunica.physics.Physics;
import org.tunica.plan.Planner;
import org.tunica.plan.Rated;
import org.tunica.rules.Considered;
import org.tunica.rules.OptionFacts;
import org.tunica.rules.RuleBook;

/**
 * Judges a segment again and again with other numbers. Options whose numbers lie in the same bands between the limits of the
 * rules get the same verdicts, so each set of bands goes through the rule engine once. For one thread.
 */
final class Trials {
    private final Planner planner;
    private final RuleBook rules;
    private final Physics physics;
    private final Derived chosen;
    private final Map<Bands, Rated> known = new HashMap<>();
    private final List<OptionFacts> measured;

    /**
     * @param situation the segment as measured; trials differ from it in numbers alone
     * @param chosen what is computed for the segment as measured, with the heat settings that stay
     */
    Trials(Planner planner, RuleBook rules, Physics physics, Situation situation, Derived chosen) {
        this.planner = planner;
        this.rules = rules;
        this.physics = physics;
        this.chosen = chosen;
        this.measured = planner.considered(situation.caseFile(), situation.limb(), situation.segment(), chosen).stream()
                .map(rules::facts)
                .toList();
    }

    /** How every technique would stand, and what is computed for it. */
    Trial of(Situation situation) {
        Derived derived = physics.deriveAtSameSettings(situation.caseFile(), situation.segment(), chosen);
        List<Considered> options =
                planner.considered(situation.caseFile(), situation.limb(), situation.segment(), derived);
        List<Bands> bands = new ArrayList<>();
        List<Considered> unknown = new ArrayList<>();
        List<OptionFacts> facts = new ArrayList<>();
        for (int i = 0; i < options.size(); i++) {
            Considered option = options.get(i);
            OptionFacts of = rules.facts(option, measured.get(i));
            Bands key = new Bands(option.technique().id(), rules.bands(of));
            bands.add(key);
            if (!known.containsKey(key)) {
                unknown.add(option);
                facts.add(of);
            }
        }
        learn(unknown, facts);
        List<Rated> rated = new ArrayList<>();
        for (int i = 0; i < options.size(); i++) {
            rated.add(planner.settled(known.get(bands.get(i)), options.get(i)));
        }
        return new Trial(derived, rated);
    }

    private void learn(List<Considered> unknown, List<OptionFacts> facts) {
        if (unknown.isEmpty()) {
            return;
        }
        List<Rated> rated = planner.rate(unknown, facts);
        for (int i = 0; i < unknown.size(); i++) {
            known.put(new Bands(unknown.get(i).technique().id(), rules.bands(facts.get(i))), rated.get(i));
        }
    }

    /** What is computed and how every technique stands, in the order of their ids. */
    record Trial(Derived derived, List<Rated> rated) {}

    private record Bands(String technique, BitSet bands) {}
}
