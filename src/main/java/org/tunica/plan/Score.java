package org.tunica.plan;

import java.util.List;

/**
 * A number that explains itself: its value is the sum of its parts, or it has none.
 *
 * @param value points, an opinion and not a measurement
 * @param says what it stands for; names the rule where one is behind it
 */
public record Score(double value, String says, List<Score> parts) {
    public Score {
        parts = List.copyOf(parts);
    }

    static Score leaf(double value, String says) {
        return new Score(value, says, List.of());
    }

    static Score sum(String says, List<Score> parts) {
        return new Score(parts.stream().mapToDouble(Score::value).sum(), says, parts);
    }
}
