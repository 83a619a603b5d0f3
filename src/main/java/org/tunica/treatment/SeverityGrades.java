package org.tunica.treatment;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What is recorded of the ten items of the revised venous clinical severity score (S-0083), each 0 to 3. An item that is
 * not recorded is unknown and not nought, so a score with a gap has no total.
 */
public record SeverityGrades(
        OptionalInt pain,
        OptionalInt varicoseVeins,
        OptionalInt venousOedema,
        OptionalInt pigmentation,
        OptionalInt inflammation,
        OptionalInt induration,
        OptionalInt numberOfActiveUlcers,
        OptionalInt longestUlcerDuration,
        OptionalInt largestUlcerSize,
        OptionalInt compressionUse) {

    /** The items nobody graded, in the order of the score. */
    public List<ClinicalSeverityScore.Item> missing() {
        return Arrays.stream(ClinicalSeverityScore.Item.values())
                .filter(item -> grade(item).isEmpty())
                .toList();
    }

    /** Whether no item is graded. */
    public boolean none() {
        return missing().size() == ClinicalSeverityScore.Item.values().length;
    }

    /** The score with its total, when every item is graded. */
    public Optional<ClinicalSeverityScore> whole() {
        if (!missing().isEmpty()) {
            return Optional.empty();
        }
        Map<ClinicalSeverityScore.Item, Integer> items = new EnumMap<>(ClinicalSeverityScore.Item.class);
        for (ClinicalSeverityScore.Item item : ClinicalSeverityScore.Item.values()) {
            items.put(item, grade(item).orElseThrow());
        }
        return Optional.of(new ClinicalSeverityScore(items));
    }

    private OptionalInt grade(ClinicalSeverityScore.Item item) {
        return switch (item) {
            case PAIN -> pain;
            case VARICOSE_VEINS -> varicoseVeins;
            case VENOUS_OEDEMA -> venousOedema;
            case PIGMENTATION -> pigmentation;
            case INFLAMMATION -> inflammation;
            case INDURATION -> induration;
            case NUMBER_OF_ACTIVE_ULCERS -> numberOfActiveUlcers;
            case LONGEST_ULCER_DURATION -> longestUlcerDuration;
            case LARGEST_ULCER_SIZE -> largestUlcerSize;
            case COMPRESSION_USE -> compressionUse;
        };
    }
}
