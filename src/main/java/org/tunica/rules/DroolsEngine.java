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
import java.util.Set;
import java.util.stream.Collectors;
import org.drools.model.DSL;
import org.drools.model.Drools;
import org.drools.model.Index;
import org.drools.model.PatternDSL;
import org.drools.model.RuleItemBuilder;
import org.drools.model.Variable;
import org.drools.model.functions.Block2;
import org.drools.model.functions.Function1;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.KieSessionsPool;

/**
 * Runs the rule tree in Drools through its canonical model, stage by stage.
 *
 * <p>The engine matches what no condition forbids; the candidate then tells what is certain from what is in doubt. Only what a
 * later rule asks for is inserted as a fact; every verdict stays with its candidate.
 */
final class DroolsEngine {
    private static final String PACKAGE = "org.tunica.rules";

    /** A rule can speak about an option at most once, certain or in doubt; one more firing means the model is wrong. */
    private static final int SLACK = 1;

    /** Sessions are used again: a new one spends an eighth to a tenth of a run on its memories. Safe for several threads. */
    private final KieSessionsPool sessions;

    private final int rulesCount;

    /** What some rule asks of earlier stages. */
    private final Set<String> asked;

    DroolsEngine(List<Rule> rules) {
        this.asked = rules.stream()
                .flatMap(rule -> rule.onVerdicts().stream())
                .map(Condition.OnVerdicts::fact)
                .collect(Collectors.toSet());
        ModelImpl model = new ModelImpl();
        List<Rule> ordered = rules.stream().sorted(Verdict.ORDER_OF_RULES).toList();
        for (int place = 0; place < ordered.size(); place++) {
            model.addRule(engineRule(ordered.get(place), ordered.size() - place));
        }
        this.rulesCount = rules.size();
        this.sessions = KieBaseBuilder.createKieBaseFromModel(model).newKieSessionsPool(1);
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
        KieSession session = sessions.newKieSession();
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
        rule.onVerdicts().forEach(condition -> items.add(earlierItem(condition, option)));
        String fact = EarlierVerdict.factOf(rule);
        items.add(on(option)
                .execute(
                        asked.contains(fact)
                                ? tellingLaterRules(rule, fact)
                                : (drools, candidate) -> candidate.take(rule)));
        return PatternDSL.rule(PACKAGE, rule.id())
                .attribute(org.drools.model.Rule.Attribute.SALIENCE, salience)
                .build(items.toArray(RuleItemBuilder[]::new));
    }

    private static PatternDSL.PatternDef<Candidate> optionPattern(Rule rule, Variable<Candidate> option) {
        PatternDSL.PatternDef<Candidate> pattern = pattern(option);
        for (Condition.OnOption condition : rule.onOption()) {
            pattern =
                    pattern.expr(condition.sentence(), candidate -> condition.truth(candidate.facts()) != Truth.FALSE);
        }
        return pattern;
    }

    private static Block2<Drools, Candidate> tellingLaterRules(Rule rule, String fact) {
        return (drools, candidate) -> {
            Verdict verdict = candidate.take(rule);
            if (candidate.note(fact, verdict)) {
                drools.insert(new EarlierVerdict(candidate, fact, verdict.speaks()));
            }
        };
    }

    /** What is wanted must be there, be it in doubt; what is not wanted must not be there for certain. */
    private static RuleItemBuilder<?> earlierItem(Condition.OnVerdicts condition, Variable<Candidate> option) {
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
                        (verdict, candidate) -> verdict.option() == candidate,
                        betaIndexedBy(
                                Candidate.class,
                                Index.ConstraintType.EQUAL,
                                1,
                                EarlierVerdict::option,
                                Function1.identity()));
        return condition.wanted() ? DSL.exists(pattern) : not(pattern.expr("for certain", EarlierVerdict::certain));
    }
}
