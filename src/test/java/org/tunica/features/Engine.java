package org.tunica.features;

import java.util.List;
import org.tunica.Tunica;
import org.tunica.knowledge.Knowledge;
import org.tunica.physics.Physics;
import org.tunica.plan.Advice;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.Planner;
import org.tunica.rules.RuleBook;

/** Rules and the planner over them: those shipped, or a mutant of them. */
public record Engine(RuleBook rules, Planner planner) {
    private static final Advice.Release NO_RELEASE = new Advice.Release("0", Advice.Release.State.DRAFT, "none");

    /** The engine that is shipped. */
    public static Engine of(Tunica tunica) {
        return of(tunica.knowledge(), tunica.physics(), tunica.rules());
    }

    /** An engine over rules and knowledge of one's own. */
    public static Engine of(Knowledge knowledge, Physics physics, RuleBook rules) {
        return new Engine(rules, new Planner(knowledge, physics, rules));
    }

    /** The options of the first segment, in order of rank. */
    List<OptionAdvice> options(Scene scene) {
        return planner.advise(scene.caseFile(), NO_RELEASE).segments().get(0).options();
    }

    OptionAdvice option(Scene scene, String technique) {
        return options(scene).stream()
                .filter(option -> option.technique().equals(technique))
                .findFirst()
                .orElseThrow();
    }
}
