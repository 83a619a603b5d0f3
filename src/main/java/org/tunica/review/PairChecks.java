package org.tunica.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.tunica.rules.Conclusion;
import org.tunica.rules.Condition;
import org.tunica.rules.Rule;

/** What can be wrong between two rules: the same said twice, one inside the other, or one against the other. */
final class PairChecks {
    private final Reasoning reasoning;

    /** Rules that can speak at all; the others are reported by themselves and would imply everything. */
    private final List<Rule> rules;

    PairChecks(Reasoning reasoning) {
        this.reasoning = reasoning;
        this.rules = reasoning.rules().stream().filter(reasoning::canSpeak).toList();
    }

    List<Remark> remarks() {
        List<Remark> remarks = new ArrayList<>();
        List<Rule> all = reasoning.rules();
        for (int i = 0; i < all.size(); i++) {
            for (int j = i + 1; j < all.size(); j++) {
                if (same(all.get(i), all.get(j))) {
                    remarks.add(remark(
                            Remark.Kind.DUPLICATE,
                            all.get(i),
                            all.get(j),
                            all.get(i).id() + " and " + all.get(j).id()
                                    + " have the same conditions and the same conclusion"));
                }
            }
        }
        for (int i = 0; i < rules.size(); i++) {
            for (int j = i + 1; j < rules.size(); j++) {
                pair(rules.get(i), rules.get(j), remarks);
            }
        }
        rules.forEach(rule -> inVain(rule, remarks));
        return remarks;
    }

    /** A caution, preference or setting of which every option is excluded anyway. */
    private void inVain(Rule rule, List<Remark> remarks) {
        if (rule.afterRanking() || rule.conclusion().kind().stage() <= Conclusion.Kind.EXCLUDE.stage()) {
            return;
        }
        List<Rule> exclusions = rules.stream()
                .filter(other -> other.conclusion().kind() == Conclusion.Kind.EXCLUDE)
                .toList();
        List<Demand> open = exclusions.stream()
                .map(other -> reasoning.demands().of(other, Wish.NOT_TRUE))
                .toList();
        if (!Reasoning.possible(reasoning.demands().of(rule, Wish.TRUE), new Demand.All(open))) {
            Optional<Rule> one = exclusions.stream()
                    .filter(other -> reasoning.speaksWherever(rule, other))
                    .findFirst();
            remarks.add(new Remark(
                    Remark.Kind.IN_VAIN,
                    List.of(rule.id()),
                    List.of(rule.place()),
                    "whenever " + rule.id() + " speaks, " + one.map(Rule::id).orElse("one rule or another")
                            + " excludes the option"));
        }
    }

    private void pair(Rule a, Rule b, List<Remark> remarks) {
        if (a.conclusion().equals(b.conclusion())) {
            if (!same(a, b)) {
                subsumption(a, b, remarks);
            }
        } else if (opposed(a.conclusion(), b.conclusion())) {
            conflict(a, b, remarks);
        } else if (twoValues(a.conclusion(), b.conclusion()) && reasoning.canSpeakTogether(a, b)) {
            remarks.add(remark(
                    Remark.Kind.CONFLICT,
                    a,
                    b,
                    a.id() + " would " + a.conclusion().sentence() + " and " + b.id() + " would "
                            + b.conclusion().sentence() + ", and both can speak of the same option"));
        }
    }

    private void subsumption(Rule a, Rule b, List<Remark> remarks) {
        boolean inB = reasoning.implies(a, b);
        boolean inA = reasoning.implies(b, a);
        if (inA && inB) {
            remarks.add(remark(
                    Remark.Kind.SUBSUMED,
                    a,
                    b,
                    a.id() + " and " + b.id() + " speak of the very same options, in other words" + weight(a)));
        } else if (inB) {
            remarks.add(remark(Remark.Kind.SUBSUMED, a, b, inside(a, b)));
        } else if (inA) {
            remarks.add(remark(Remark.Kind.SUBSUMED, b, a, inside(b, a)));
        }
    }

    private static String inside(Rule a, Rule b) {
        return "whenever " + a.id() + " speaks, " + b.id() + " says \""
                + b.conclusion().sentence() + "\" already" + weight(a);
    }

    private static String weight(Rule rule) {
        return rule.conclusion() instanceof Conclusion.Weighed ? "; the points count twice" : "";
    }

    private void conflict(Rule a, Rule b, List<Remark> remarks) {
        Rule narrow = reasoning.speaksWherever(a, b) ? a : b;
        Rule wide = narrow == a ? b : a;
        if (reasoning.speaksWherever(narrow, wide)) {
            remarks.add(remark(
                    Remark.Kind.CONFLICT,
                    narrow,
                    wide,
                    narrow.id() + " says \"" + narrow.conclusion().sentence() + "\", but whenever it speaks, "
                            + wide.id() + " says \"" + wide.conclusion().sentence() + "\""));
        }
    }

    private static boolean opposed(Conclusion a, Conclusion b) {
        return a.kind() == Conclusion.Kind.PREFER && b.kind() == Conclusion.Kind.DISFAVOUR
                || a.kind() == Conclusion.Kind.DISFAVOUR && b.kind() == Conclusion.Kind.PREFER;
    }

    private static boolean twoValues(Conclusion a, Conclusion b) {
        return a instanceof Conclusion.SetTo one
                && b instanceof Conclusion.SetTo other
                && one.settingId().equals(other.settingId());
    }

    /** Whether conditions and conclusion are the same but for the order of conditions and words. */
    private static boolean same(Rule a, Rule b) {
        return a.conclusion().equals(b.conclusion()) && conditions(a).equals(conditions(b));
    }

    private static Set<Condition> conditions(Rule rule) {
        return rule.conditions().stream().map(PairChecks::inOrder).collect(Collectors.toSet());
    }

    private static Condition inOrder(Condition condition) {
        if (condition instanceof Condition.AmongWords word) {
            return new Condition.AmongWords(word.field(), word.among(), sorted(word.words()));
        }
        if (condition instanceof Condition.AnyOf set) {
            return new Condition.AnyOf(set.field(), set.any(), sorted(set.words()));
        }
        if (condition instanceof Condition.Elsewhere elsewhere) {
            return new Condition.Elsewhere(elsewhere.wanted(), (Condition.OnOption) inOrder(elsewhere.condition()));
        }
        return condition;
    }

    private static List<String> sorted(List<String> words) {
        return words.stream().sorted().toList();
    }

    private static Remark remark(Remark.Kind kind, Rule a, Rule b, String sentence) {
        return new Remark(kind, List.of(a.id(), b.id()), List.of(a.place(), b.place()), sentence);
    }
}
