package org.tunica.plan;

import java.util.ArrayList;
import java.util.List;
import org.tunica.rules.Verdict;

/** Adds up reasons for, reasons against and cautions into a tree that explains itself. */
final class Scoring {
    private final ScoreWeights weights;

    Scoring(ScoreWeights weights) {
        this.weights = weights;
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
        parts.add(Score.leaf(weights.base(), "every option starts here"));
        judged.reasonsFor()
                .forEach(verdict -> parts.add(Score.leaf(weights.of(Judged.strength(verdict)), line("for", verdict))));
        judged.reasonsAgainst()
                .forEach(verdict ->
                        parts.add(Score.leaf(-weights.of(Judged.strength(verdict)), line("against", verdict))));
        judged.cautions()
                .forEach(verdict ->
                        parts.add(Score.leaf(-weights.ofCaution(Judged.strength(verdict)), line("caution", verdict))));
        return Score.sum("points", parts);
    }

    private static String line(String stands, Verdict verdict) {
        String doubt = verdict.speaks() ? "" : " (in doubt: " + String.join(", ", verdict.doubt()) + " not recorded)";
        return stands + ": " + verdict.rule().id() + " " + verdict.rule().title() + doubt;
    }
}
