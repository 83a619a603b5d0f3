package org.tunica.plan;

import java.util.List;
import org.tunica.knowledge.Knowledge;
import org.tunica.rules.Conclusion;

/** How much reasons count; every weight is a quantity of knowledge/weights.yaml. */
public record ScoreWeights(
        double base, double firstChoice, double strong, double moderate, double slight, double caution) {
    /** The ids, in the order of the components. */
    public static final List<String> IDS = List.of(
            "score.base", "score.first-choice", "score.strong", "score.moderate", "score.slight", "score.caution");

    static ScoreWeights of(Knowledge knowledge) {
        double[] v = IDS.stream().mapToDouble(knowledge::value).toArray();
        return new ScoreWeights(v[0], v[1], v[2], v[3], v[4], v[5]);
    }

    double of(Conclusion.Strength strength) {
        return switch (strength) {
            case FIRST_CHOICE -> firstChoice;
            case STRONG -> strong;
            case MODERATE -> moderate;
            case SLIGHT -> slight;
        };
    }
}
