package org.tunica.replay;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.tunica.casefile.PlausibleRange;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Measurement;
import org.tunica.knowledge.Quantity;
import org.tunica.plan.ScoreWeights;

/**
 * What two releases have in common beside their rules, so that it need not be computed twice. In doubt a part counts as
 * another; where the texts about a number differ and the number does not, it counts as the same.
 *
 * @param words whether both can read the same cases
 * @param models whether both compute the same numbers of a case and ask about them in the same words
 * @param ranking whether both weigh verdicts alike
 */
record Sameness(boolean words, boolean models, boolean ranking) {
    private static final String BODY = "tissue.body.temperature";

    static Sameness of(ReleaseSide before, ReleaseSide after) {
        return new Sameness(
                words(before.knowledge()).equals(words(after.knowledge())),
                models(before).equals(models(after)),
                ranking(before.knowledge()).equals(ranking(after.knowledge())));
    }

    private static List<Object> words(Knowledge knowledge) {
        return List.of(ranges(knowledge), knowledge.techniqueIds(), knowledge.allergyIds(), knowledge.conditionIds());
    }

    private static Map<String, PlausibleRange> ranges(Knowledge knowledge) {
        Map<String, PlausibleRange> ranges = new HashMap<>();
        knowledge.measurements().forEach((path, measurement) -> ranges.put(path, measurement.range()));
        return ranges;
    }

    private static List<Object> models(ReleaseSide side) {
        Knowledge knowledge = side.knowledge();
        return List.of(
                numbers(knowledge, side.physics().quantitiesUsed()),
                deviations(knowledge),
                knowledge.techniques(),
                knowledge.glossary());
    }

    private static Map<String, OptionalDouble> deviations(Knowledge knowledge) {
        Map<String, OptionalDouble> deviations = new HashMap<>();
        for (Measurement measurement : knowledge.measurements().values()) {
            deviations.put(measurement.path(), measurement.sd());
        }
        return deviations;
    }

    private static List<Object> ranking(Knowledge knowledge) {
        Set<String> ids = new TreeSet<>(ScoreWeights.IDS);
        ids.add(BODY);
        return List.of(numbers(knowledge, ids), knowledge.rates());
    }

    private static Map<String, Object> numbers(Knowledge knowledge, Set<String> ids) {
        Map<String, Object> numbers = new HashMap<>();
        for (String id : ids) {
            Quantity quantity = knowledge.quantity(id);
            numbers.put(id, List.of(quantity.value(), quantity.low(), quantity.high(), quantity.unit()));
        }
        return numbers;
    }

    /** Whether only rules can make a difference. */
    boolean butForRules() {
        return models && ranking;
    }
}
