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
 * <p>The engine matches what no condition forbids; the collector then tells what is certain from what is in doubt. Only the
 * findings of stage 1 are inserted as facts; the other verdicts go to the collector, because nothing later asks for them.
 */
final class DroolsEngine {
    private static final String PACKAGE = "org.tunica.rules";

    /** A rule can speak about an option at most once, certain or in doubt; one more firing means the model is wrong. */
    private static final int SLACK = 1;

    private final KieBase kieBase;
    private final int rulesCount;
    private final Global<Collector> collector = globalOf(Collector.class, PACKAGE, "collector");

    DroolsEngine(List<Rule> rules) {
        ModelImpl model = new ModelImpl();
        model.addGlobal(collector);
        List<Rule> ordered = rules.stream().sorted(Verdict.ORDER_OF_RULES).toList();
        for (int place = 0; place < ordered.size(); place++) {
            model.addRule(engineRule(ordered.get(place), ordered.size() - place));
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
            int bound = rulesCount * options.size() + SLACK;
            if (session.fireAllRules(bound) >= bound) {
                throw new IllegalStateException("the rules fired " + bound + " times, which is the bound");
            }
            return collected.verdicts();
        } finally {
            session.dispose();
        }
    }

    private org.drools.model.Rule engineRule(Rule rule, int salience) {
        Variable<OptionFacts> option = DSL.declarationOf(OptionFacts.class, "option");
        List<RuleItemBuilder<?>> items = new ArrayList<>();
        items.add(optionPattern(rule, option));
        rule.onFindings().forEach(condition -> items.add(findingItem(condition, option)));
        items.add(on(option, collector).execute((drools, facts, into) -> {
            FindingFact finding = into.take(rule, facts);
            if (finding != null) {
                drools.insert(finding);
            }
        }));
        return PatternDSL.rule(PACKAGE, rule.id())
                .attribute(org.drools.model.Rule.Attribute.SALIENCE, salience)
                .build(items.toArray(RuleItemBuilder[]::new));
    }

    private static PatternDSL.PatternDef<OptionFacts> optionPattern(Rule rule, Variable<OptionFacts> option) {
        PatternDSL.PatternDef<OptionFacts> pattern = pattern(option);
        for (Condition.OnOption condition : rule.onOption()) {
            pattern = pattern.expr(condition.sentence(), facts -> condition.truth(facts) != Truth.FALSE);
        }
        return pattern;
    }

    /** A wanted finding must be there, be it in doubt; an unwanted one must not be there for certain. */
    private static RuleItemBuilder<?> findingItem(Condition.Found condition, Variable<OptionFacts> option) {
        Variable<FindingFact> found = DSL.declarationOf(FindingFact.class);
        PatternDSL.PatternDef<FindingFact> pattern = pattern(found)
                .expr(
                        "finding " + condition.finding(),
                        fact -> fact.finding().equals(condition.finding()),
                        alphaIndexedBy(
                                String.class, Index.ConstraintType.EQUAL, 0, FindingFact::finding, condition.finding()))
                .expr(
                        "same option",
                        option,
                        (fact, facts) -> fact.option().equals(facts.key()),
                        betaIndexedBy(
                                OptionKey.class, Index.ConstraintType.EQUAL, 1, FindingFact::option, OptionFacts::key));
        if (condition.wanted()) {
            return DSL.exists(pattern);
        }
        return not(pattern.expr("for certain", FindingFact::certain));
    }
}
