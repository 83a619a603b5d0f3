package org.tunica.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.evrete.KnowledgeService;
import org.evrete.api.ActivationMode;
import org.evrete.api.Knowledge;
import org.evrete.api.RhsContext;
import org.evrete.api.StatelessSession;
import org.evrete.api.Type;
import org.evrete.api.builders.LhsBuilder;
import org.evrete.api.builders.RuleSetBuilder;

/**
 * The same rule tree in another general-purpose engine, Evrete.
 *
 * <p>Conditions on the option are its predicates, equal ones one object so that it can share them; stages are its salience.
 * By hand: its builder knows no negation, so conditions on earlier verdicts are tried in the action against sets the option
 * carries, which also spares it every join.
 */
final class PeerEngine implements AutoCloseable {
    private final KnowledgeService service = new KnowledgeService();
    private final Map<String, Predicate<Object[]>> shared = new HashMap<>();
    private final Knowledge knowledge;

    PeerEngine(List<Rule> rules) {
        List<Rule> ordered = rules.stream().sorted(Verdict.ORDER_OF_RULES).toList();
        Knowledge empty = service.newKnowledge();
        Type<PeerOption> type = empty.getTypeResolver().declare(PeerOption.class);
        type.declareField("facts", OptionFacts.class, PeerOption::facts);
        RuleSetBuilder<Knowledge> builder = empty.builder();
        for (int place = 0; place < ordered.size(); place++) {
            add(builder, ordered.get(place), ordered.size() - place);
        }
        this.knowledge = builder.build();
    }

    private void add(RuleSetBuilder<Knowledge> builder, Rule rule, int salience) {
        LhsBuilder<Knowledge> left =
                builder.newRule(rule.id()).salience(salience).forEach("$o", PeerOption.class);
        for (Condition.OnOption condition : rule.onOption()) {
            left = left.where(predicate(condition), "$o.facts");
        }
        left.execute((RhsContext context) -> context.<PeerOption>get("$o").hear(rule));
    }

    private Predicate<Object[]> predicate(Condition.OnOption condition) {
        return shared.computeIfAbsent(
                condition.sentence(), key -> values -> condition.truth((OptionFacts) values[0]) != Truth.FALSE);
    }

    List<Said> judge(List<OptionFacts> options) {
        List<PeerOption> heard = options.stream().map(PeerOption::new).toList();
        StatelessSession session = knowledge.newStatelessSession(ActivationMode.CONTINUOUS);
        session.insert(heard);
        session.fire();
        List<Said> said = new ArrayList<>();
        heard.forEach(option -> said.addAll(option.said));
        return said;
    }

    @Override
    public void close() {
        service.shutdown();
    }

    /** An option and what was said of it so far. */
    public static final class PeerOption {
        private final OptionFacts facts;
        private final List<Said> said = new ArrayList<>();
        private final Set<String> certain = new HashSet<>();
        private final Set<String> doubtful = new HashSet<>();

        PeerOption(OptionFacts facts) {
            this.facts = facts;
        }

        OptionFacts facts() {
            return facts;
        }

        void hear(Rule rule) {
            boolean sure = true;
            for (Condition condition : rule.conditions()) {
                Truth truth = condition instanceof Condition.OnVerdicts earlier
                        ? earlier(earlier)
                        : ((Condition.OnOption) condition).truth(facts);
                if (truth == Truth.FALSE) {
                    return;
                }
                sure &= truth == Truth.TRUE;
            }
            said.add(new Said(rule.id(), facts.key(), sure));
            (sure ? certain : doubtful).add(EarlierVerdict.factOf(rule));
        }

        private Truth earlier(Condition.OnVerdicts condition) {
            Truth there = certain.contains(condition.fact())
                    ? Truth.TRUE
                    : doubtful.contains(condition.fact()) ? Truth.UNKNOWN : Truth.FALSE;
            return condition.wanted() ? there : there.not();
        }
    }
}
