package org.tunica.session;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Which technique for which segment in which session, as whole numbers.
 *
 * @param segments what each segment may get; a segment may also be left
 * @param limits the most of each share in one session, in whole steps, rounded down; an absent share has no limit
 * @param start minutes each session takes whatever is done, in steps
 * @param generatorTime minutes for each generator set up, in steps
 * @param turnTime minutes for turning the patient, in steps
 * @param generatorsMost most kinds of generator in one session
 */
record Problem(
        List<List<Choice>> segments,
        Map<Shared, Integer> limits,
        int start,
        int generatorTime,
        int turnTime,
        int generatorsMost) {

    Problem {
        segments = segments.stream().map(List::copyOf).toList();
        limits = Map.copyOf(limits);
    }

    /** The same without one limit. */
    Problem without(Shared shared) {
        Map<Shared, Integer> fewer = new EnumMap<>(Shared.class);
        fewer.putAll(limits);
        fewer.remove(shared);
        return new Problem(
                segments,
                fewer,
                start,
                generatorTime,
                turnTime,
                shared == Shared.GENERATOR ? Integer.MAX_VALUE : generatorsMost);
    }

    /** The most that could be had if nothing were shared. */
    int bound() {
        return segments.stream()
                .mapToInt(choices ->
                        choices.stream().mapToInt(Choice::worth).max().orElse(0))
                .sum();
    }
}
