package org.tunica.plan;

import java.util.List;
import java.util.Locale;
import org.tunica.knowledge.Knowledge;
import org.tunica.rules.Conclusion;

/** How much reasons and cautions count; every weight is a quantity of knowledge/weights.yaml. */
public record ScoreWeights(double base, double firstChoice, Graded reason, Graded caution) {
    /** The ids, in the order they are read. */
    public static final List<String> IDS = List.of(
            "score.base",
            "score.first-choice",
            "score.strong",
            "score.moderate",
            "score.slight",
            "score.caution.strong",
            "score.caution.moderate",
            "score.caution.slight");

    static ScoreWeights of(Knowledge knowledge) {
        double[] v = IDS.stream().mapToDouble(knowledge::value).toArray();
        return new ScoreWeights(v[0], v[1], new Graded(v[2], v[3], v[4]), new Graded(v[5], v[6], v[7]));
    }

    /** The id of the weight of a reason. */
    static String idOf(Conclusion.Strength strength) {
        return "score." + word(strength);
    }

    /** The id of the weight of a caution. */
    static String idOfCaution(Conclusion.Strength strength) {
        return "score.caution." + word(strength);
    }

    private static String word(Conclusion.Strength strength) {
        return strength.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    double of(Conclusion.Strength strength) {
        return strength == Conclusion.Strength.FIRST_CHOICE ? firstChoice : reason.of(strength);
    }

    double ofCaution(Conclusion.Strength strength) {
        return caution.of(strength);
    }

    /** Points by strength. */
    record Graded(double strong, double moderate, double slight) {
        double of(Conclusion.Strength strength) {
            return switch (strength) {
                case STRONG -> strong;
                case MODERATE -> moderate;
                case SLIGHT -> slight;
                case FIRST_CHOICE -> throw new IllegalArgumentException("a first choice is no grade");
            };
        }
    }
}
