package org.tunica.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;
import org.tunica.rules.Conclusion;
import org.tunica.rules.Rule;
import org.tunica.rules.Verdict;

/** Adds up reasons for, reasons against and cautions into a tree that explains itself. */
final class Scoring {
    private final Knowledge knowledge;
    private final ScoreWeights weights;

    Scoring(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.weights = ScoreWeights.of(knowledge);
    }

    /** The points alone, the value of {@link #score}. */
    double points(Judged judged) {
        double sum = weights.base();
        for (Verdict verdict : judged.reasonsFor()) {
            sum += weights.of(Judged.strength(verdict));
        }
        for (Verdict verdict : judged.reasonsAgainst()) {
            sum -= weights.of(Judged.strength(verdict));
        }
        for (Verdict verdict : judged.cautions()) {
            sum -= weights.ofCaution(Judged.strength(verdict));
        }
        return sum;
    }

    Score score(Judged judged) {
        List<Score> parts = new ArrayList<>();
        parts.add(Score.leaf(weights.base(), "every option starts here", ofEvery()));
        judged.reasonsFor().forEach(verdict -> parts.add(reason("for", 1, verdict)));
        judged.reasonsAgainst().forEach(verdict -> parts.add(reason("against", -1, verdict)));
        judged.cautions()
                .forEach(verdict -> parts.add(Score.leaf(
                        -weights.ofCaution(Judged.strength(verdict)),
                        line("caution", verdict),
                        origin(ScoreWeights.idOfCaution(Judged.strength(verdict)), verdict.rule()))));
        return Score.sum("points", parts);
    }

    private Score reason(String stands, int sign, Verdict verdict) {
        Conclusion.Strength strength = Judged.strength(verdict);
        return Score.leaf(
                sign * weights.of(strength),
                line(stands, verdict),
                origin(ScoreWeights.idOf(strength), verdict.rule()));
    }

    private Score.Origin ofEvery() {
        Quantity base = knowledge.quantity(ScoreWeights.IDS.get(0));
        return new Score.Origin(
                base.id(),
                Optional.empty(),
                base.provenance().source(),
                base.provenance().change(),
                List.of());
    }

    private Score.Origin origin(String weight, Rule rule) {
        return new Score.Origin(
                weight,
                Optional.of(rule.id()),
                String.join(" ", rule.sources()),
                rule.change(),
                rule.limitIds().stream()
                        .map(knowledge::quantity)
                        .map(limit -> new Score.Limit(
                                limit.id(),
                                limit.value(),
                                limit.unit(),
                                limit.provenance().source()))
                        .toList());
    }

    private static String line(String stands, Verdict verdict) {
        String doubt = verdict.speaks() ? "" : " (in doubt: " + String.join(", ", verdict.doubt()) + " not recorded)";
        return stands + ": " + verdict.rule().id() + " " + verdict.rule().title() + doubt;
    }
}
