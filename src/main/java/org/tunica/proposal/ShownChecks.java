package org.tunica.proposal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tunica.review.Remark;
import org.tunica.review.RuleReview;
import org.tunica.rules.Rule;

/** Whether scenarios show what a change does. They are looked for, not run. */
final class ShownChecks {
    private final WorkingCopy copy;
    private final RuleReview review;
    private final Touched touched;

    ShownChecks(WorkingCopy copy, RuleReview review, Touched touched) {
        this.copy = copy;
        this.review = review;
        this.touched = touched;
    }

    Check check() {
        Optional<Path> features = copy.features();
        Set<String> moved = moved();
        if (features.isEmpty()) {
            boolean nothingToShow = touched.rules().isEmpty() && moved.isEmpty();
            return new Check(
                    Check.Question.SCENARIOS,
                    nothingToShow ? Check.Result.WARN : Check.Result.BAR,
                    List.of("there are no scenarios beside the rules: no features/ in the working copy"));
        }
        List<String> bars = new ArrayList<>();
        List<String> warns = new ArrayList<>();
        for (Remark remark : unshown(features.get())) {
            (isOfThisChange(remark, moved) ? bars : warns).add(remark.toString());
        }
        warns.addAll(asBefore(moved));
        return Check.of(Check.Question.SCENARIOS, bars, warns);
    }

    /** Rules that say the same words about another number. */
    private Set<String> moved() {
        Set<String> moved = new TreeSet<>();
        touched.numbers()
                .forEach(number -> review.rules().stream()
                        .filter(rule -> rule.limitIds().contains(number.id()))
                        .map(Rule::id)
                        .forEach(moved::add));
        return moved;
    }

    private List<Remark> unshown(Path features) {
        try {
            return review.unshown(features);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Also a scenario of a rule that is no more: whoever takes a rule out takes its scenarios out. */
    private boolean isOfThisChange(Remark remark, Set<String> moved) {
        boolean ofARule = review.rules().stream().map(Rule::id).anyMatch(remark.rules()::contains);
        return !ofARule || remark.rules().stream().anyMatch(id -> touched.has(id) || moved.contains(id));
    }

    /** Rows just off a limit no longer stand there when the limit moved and nobody touched them. */
    private List<String> asBefore(Set<String> moved) {
        List<String> warns = new ArrayList<>();
        for (String rule : moved) {
            String tag = "@" + rule;
            boolean edited = copy.scenarios().entrySet().stream()
                    .filter(text -> text.getValue().contains(tag))
                    .anyMatch(text ->
                            !text.getValue().equals(copy.scenariosBefore().getOrDefault(text.getKey(), "")));
            if (!edited) {
                warns.add(
                        "a limit of " + rule + " moved, and its scenarios are as before; their rows at the limit may no"
                                + " longer stand there");
            }
        }
        return warns;
    }
}
