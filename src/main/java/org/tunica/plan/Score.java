package org.tunica.plan;

import java.util.List;
import java.util.Optional;

/**
 * A number that explains itself: its value is the sum of its parts, or it has none.
 *
 * @param value points, an opinion and not a measurement
 * @param says what it stands for; names the rule where one is behind it
 * @param origin where the number comes from; absent for a sum
 */
public record Score(double value, String says, Optional<Origin> origin, List<Score> parts) {
    public Score {
        parts = List.copyOf(parts);
    }

    static Score leaf(double value, String says, Origin origin) {
        return new Score(value, says, Optional.of(origin), List.of());
    }

    static Score sum(String says, List<Score> parts) {
        return new Score(parts.stream().mapToDouble(Score::value).sum(), says, Optional.empty(), parts);
    }

    /**
     * Where points come from.
     *
     * @param weight id of the weight in knowledge/weights.yaml that says how much
     * @param rule id of the rule that speaks; absent where every option gets the points
     * @param source ids of the sources of the rule, or of the weight, separated by blanks
     * @param change number of the change record
     * @param limits the limits the rule compares with
     */
    public record Origin(String weight, Optional<String> rule, String source, String change, List<Limit> limits) {}

    /**
     * A limit as it stands.
     *
     * @param unit UCUM code
     */
    public record Limit(String id, double value, String unit, String source) {}
}
