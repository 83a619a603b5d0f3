package org.tunica.rules;

import static org.drools.model.DSL.on;
import static org.drools.model.PatternDSL.alphaIndexedBy;
import static org.drools.model.PatternDSL.betaIndexedBy;
import static org.drools.model.PatternDSL.not;
import static org.drools.model.PatternDSL.pattern;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.drools.model.DSL;
import org.drools.model.Index;
import org.drools.model.PatternDSL;
import org.drools.model.RuleItemBuilder;
import org.drools.model.Variable;
import org.drools.model.functions.Function1;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;

/**
 * Runs the rule tree in Drools through its canonical model, stage by stage.
 *
 * <p>The engine matches what no condition forbids; the candidate then tells what is certain from what is in doubt. Only the
 * findings of stage 1 are inserted as facts; the other verdicts stay with their candidate, because nothing later asks for them.
 */
final class DroolsEngine {
    private static final String PACKAGE = "org.tunica.rules";

    /** A rule can speak about an option at most once, certain or in doubt; one more firing means the model is wrong. */
    private static final int SLACK = 1;

    private final KieBase kieBase;
    private final int rulesCount;

    DroolsEngine(List<Rule> rules) {
        ModelImpl model = new ModelImpl();
        List<Rule> ordered = rules.stream().sorted(Verdict.ORDER_OF_RULES).toList();
        for (int place = 0; place < ordered.size(); place++) {
            model.addRule(engineRule(ordered.get(place), ordered.size() - place));
        }
        this.kieBase = KieBaseBuilder.createKieBaseFromModel(model);
        this.rulesCount = rules.size();
    }

    /** All verdicts in order; the rules run in theirs, so that little is left to sort. */
    List<Verdict> judge(Collection<OptionFacts> options) {
        List<Candidate> candidates = options.stream()
                .sorted(Comparator.comparing(OptionFacts::key))
                .map(Candidate::new)
                .toList();
        run(candidates);
        return candidates.stream()
                .flatMap(candidate -> candidate.verdicts().stream())
                .sorted()
                .toList();
    }

    private void run(List<Candidate> candidates) {
        KieSession session = kieBase.newKieSession();
        try {
            candidates.forEach(session::insert);
            int bound = rulesCount * candidates.size() + SLACK;
            if (session.fireAllRules(bound) >= bound) {
                throw new IllegalStateException("the rules fired " + bound + " times, which is the bound");
            }
        } finally {
            session.dispose();
        }
    }

    private org.drools.model.Rule engineRule(Rule rule, int salience) {
        Variable<Candidate> option = DSL.declarationOf(Candidate.class, "option");
        List<RuleItemBuilder<?>> items = new ArrayList<>();
        items.add(optionPattern(rule, option));
        rule.onFindings().forEach(condition -> items.add(findingItem(condition, option)));
        items.add(on(option).execute((drools, candidate) -> {
            FindingFact finding = candidate.take(rule);
            if (finding != null) {
                drools.insert(finding);
            }
        }));
        return PatternDSL.rule(PACKAGE, rule.id())
                .attribute(org.drools.model.Rule.Attribute.SALIENCE, salience)
                .build(items.toArray(RuleItemBuilder[]::new));
    }

    private static PatternDSL.PatternDef<Candidate> optionPattern(Rule rule, Variable<Candidate> option) {
        PatternDSL.PatternDef<Candidate> pattern = pattern(option);
        for (Condition.OnOption condition : rule.onOption()) {
            pattern = pattern.expr(condition.sentence(), candidate -> condition.truth(candidate.facts()) != Truth.FALSE);
        }
        return pattern;
    }

    /** A wanted finding must be there, be it in doubt; an unwanted one must not be there for certain. */
    private static RuleItemBuilder<?> findingItem(Condition.Found condition, Variable<Candidate> option) {
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
                        (fact, candidate) -> fact.option().equals(candidate),
                        betaIndexedBy(
                                Candidate.class, Index.ConstraintType.EQUAL, 1, FindingFact::option, Function1.identity()));
        if (condition.wanted()) {
            return DSL.exists(pattern);
        }
        return not(pattern.expr("for certain", FindingFact::certain));
    }
}
