package org.tunica.rules;

import static org.drools.model.DSL.globalOf;
import static org.drools.model.DSL.on;
import static org.drools.model.PatternDSL.alphaIndexedBy;
import static org.drools.model.PatternDSL.betaIndexedBy;
import static org.drools.model.PatternDSL.not;
import static org.drools.model.PatternDSL.pattern;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.drools.model.DSL;
import org.drools.model.Global;
import org.drools.model.Index;
import org.drools.model.PatternDSL;
import org.drools.model.RuleItemBuilder;
import org.drools.model.Variable;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;

/**
 * Runs the rule tree in Drools through its canonical model, stage by stage.
 *
 * <p>Each rule becomes two engine rules: one that fires when every condition holds, and a twin that fires after it, in
 * the same stage, when none fails but some cannot be told. Only what a later rule asks for is inserted as a fact; every
 * verdict goes to a collector.
 */
final class DroolsEngine {
    private static final String PACKAGE = "org.tunica.rules";
    private static final int LAST_STAGE = 5;

    /** A rule can speak about an option at most once, certain or in doubt; one more firing means the model is wrong. */
    private static final int SLACK = 1;

    private final KieBase kieBase;
    private final int rulesCount;

    /** What some rule asks of earlier stages. */
    private final Set<String> asked;

    private final Global<Collector> collector = globalOf(Collector.class, PACKAGE, "collector");

    DroolsEngine(List<Rule> rules) {
        ModelImpl model = new ModelImpl();
        model.addGlobal(collector);
        this.asked = rules.stream()
                .flatMap(rule -> rule.onVerdicts().stream())
                .map(Condition.OnVerdicts::fact)
                .collect(Collectors.toSet());
        for (Rule rule : rules) {
            model.addRule(engineRule(rule, true));
            model.addRule(engineRule(rule, false));
        }
        this.kieBase = KieBaseBuilder.createKieBaseFromModel(model);
        this.rulesCount = rules.size();
    }

    List<Verdict> judge(Collection<OptionFacts> options) {
        KieSession session = kieBase.newKieSession();
        try {
            Collector collected = new Collector();
            session.setGlobal("collector", collected);
            options.forEach(session::insert);
            int bound = 2 * rulesCount * options.size() + SLACK;
            if (session.fireAllRules(bound) >= bound) {
                throw new IllegalStateException("the rules fired " + bound + " times, which is the bound");
            }
            return collected.verdicts();
        } finally {
            session.dispose();
        }
    }

    private org.drools.model.Rule engineRule(Rule rule, boolean certain) {
        Variable<OptionFacts> option = DSL.declarationOf(OptionFacts.class, "option");
        List<RuleItemBuilder<?>> items = new ArrayList<>();
        items.add(optionPattern(rule, certain, option));
        rule.onVerdicts().forEach(condition -> items.add(earlierItem(condition, certain, option)));
        items.add(on(option, collector).execute((drools, facts, into) -> {
            EarlierVerdict verdict = into.take(rule, facts, certain);
            if (verdict != null && asked.contains(verdict.fact())) {
                drools.insert(verdict);
            }
        }));
        return PatternDSL.rule(PACKAGE, rule.id() + (certain ? "" : " in doubt"))
                .attribute(org.drools.model.Rule.Attribute.SALIENCE, salience(rule, certain))
                .build(items.toArray(RuleItemBuilder[]::new));
    }

    /** Earlier stages first; within a stage what is certain before what is in doubt. */
    private static int salience(Rule rule, boolean certain) {
        int stage = rule.conclusion().kind().stage();
        return 2 * (LAST_STAGE - stage) + (certain ? 1 : 0);
    }

    private static PatternDSL.PatternDef<OptionFacts> optionPattern(
            Rule rule, boolean certain, Variable<OptionFacts> option) {
        PatternDSL.PatternDef<OptionFacts> pattern = pattern(option);
        for (Condition.OnOption condition : rule.onOption()) {
            String id = (certain ? "holds: " : "may hold: ") + condition.sentence();
            pattern = certain
                    ? pattern.expr(id, facts -> condition.truth(facts) == Truth.TRUE)
                    : pattern.expr(id, facts -> condition.truth(facts) != Truth.FALSE);
        }
        return pattern;
    }

    /**
     * What is wanted must be there (certain, or for the twin at all); an unwanted one must not be there (at all, or for
     * the twin not for certain).
     */
    private static RuleItemBuilder<?> earlierItem(
            Condition.OnVerdicts condition, boolean certain, Variable<OptionFacts> option) {
        Variable<EarlierVerdict> earlier = DSL.declarationOf(EarlierVerdict.class);
        PatternDSL.PatternDef<EarlierVerdict> pattern = pattern(earlier)
                .expr(
                        "says " + condition.fact(),
                        verdict -> verdict.fact().equals(condition.fact()),
                        alphaIndexedBy(
                                String.class, Index.ConstraintType.EQUAL, 0, EarlierVerdict::fact, condition.fact()))
                .expr(
                        "same option",
                        option,
                        (verdict, facts) -> verdict.option().equals(facts.key()),
                        betaIndexedBy(
                                OptionKey.class,
                                Index.ConstraintType.EQUAL,
                                1,
                                EarlierVerdict::option,
                                OptionFacts::key));
        if (certain == condition.wanted()) {
            pattern = pattern.expr("for certain", EarlierVerdict::certain);
        }
        return condition.wanted() ? DSL.exists(pattern) : not(pattern);
    }
}
