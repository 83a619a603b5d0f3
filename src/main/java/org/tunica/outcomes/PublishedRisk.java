package org.tunica.outcomes;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.PublishedRate;

/**
 * The chance that a treated vein is not closed after a year, by the rates of {@code knowledge/rates.yaml} alone: one less the mean of
 * the shares that sources give for the technique and vein, each source counting alike. No published model foretells closure from
 * more than that, so a thick wall, a wide lumen or a winding course change nothing here.
 */
final class PublishedRisk {
    private final Knowledge knowledge;
    private final Map<List<String>, Optional<Risk>> known = new HashMap<>();

    PublishedRisk(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    /**
     * A chance and where it is from.
     *
     * @param failureProbability greater than 0 and less than 1
     * @param rates the rates behind it
     */
    record Risk(double failureProbability, List<PublishedRate> rates) {}

    /** The chance for a segment; absent without a published rate, and where rates know no failure or no success. */
    Optional<Risk> of(SegmentOutcome outcome) {
        return known.computeIfAbsent(
                List.of(outcome.technique(), outcome.vein().word()), key -> risk(key.get(0), key.get(1)));
    }

    private Optional<Risk> risk(String technique, String vein) {
        List<PublishedRate> rates = knowledge.rates().values().stream()
                .filter(rate ->
                        rate.techniques().contains(technique) && rate.veins().contains(vein))
                .toList();
        double failed =
                1 - rates.stream().mapToDouble(PublishedRate::share).average().orElse(1);
        return failed > 0 && failed < 1 ? Optional.of(new Risk(failed, rates)) : Optional.empty();
    }

    /** Words of the veins among these that no published rate speaks of. */
    Set<String> veinsWithout(List<SegmentOutcome> outcomes) {
        Set<String> without = new TreeSet<>();
        outcomes.stream()
                .filter(one -> of(one).isEmpty())
                .forEach(one -> without.add(one.vein().word()));
        return without;
    }
}
