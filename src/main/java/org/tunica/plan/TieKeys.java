package org.tunica.plan;

import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tunica.heat.HeatSpread;
import org.tunica.heat.ProposedSetting;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.PublishedRate;
import org.tunica.knowledge.Quantity;
import org.tunica.knowledge.Technique;
import org.tunica.physics.HeatOutlook;
import org.tunica.physics.OptionNumbers;
import org.tunica.rules.Considered;

/**
 * Reads what settles ties from computed numbers and published rates, rounded to what a reader sees: tenths of a percent and
 * of a degree.
 */
final class TieKeys {
    private static final double PER_MILLE = 1000;
    private static final double TENTHS = 10;

    private final double bodyC;

    /** Mean rate by technique, then vein, every source counted alike. */
    private final Map<String, Map<String, Double>> durability;

    TieKeys(Knowledge knowledge) {
        this.bodyC = knowledge.value("tissue.body.temperature");
        this.durability = knowledge.techniqueIds().stream()
                .collect(Collectors.toMap(
                        id -> id, id -> means(id, knowledge.rates().values())));
    }

    private static Map<String, Double> means(String technique, Collection<PublishedRate> rates) {
        return rates.stream()
                .filter(rate -> rate.techniques().contains(technique))
                .flatMap(rate -> rate.veins().stream().map(vein -> Map.entry(vein, rate.share())))
                .collect(Collectors.groupingBy(
                        Map.Entry::getKey,
                        Collectors.collectingAndThen(Collectors.averagingDouble(Map.Entry::getValue), TieKeys::share)));
    }

    TieKey of(Considered option) {
        Technique technique = option.technique();
        OptionNumbers numbers = option.derived().options().get(technique.id());
        double lasting = durability
                .get(technique.id())
                .getOrDefault(option.segment().vein().word(), 0.0);
        return switch (technique.family()) {
            case HEAT -> ofHeat(numbers, lasting);
            case ADHESIVE -> new TieKey(0, 0, bodyC, lasting);
            case FOAM, MECHANOCHEMICAL -> new TieKey(share(reaches(technique, numbers)), 0, bodyC, lasting);
            case FOCUSED_ULTRASOUND ->
                new TieKey(
                        numbers.wallFractionKilled().orElse(0) >= 1 ? 1 : 0,
                        TieKey.WORST.charShare(),
                        TieKey.WORST.nerveC(),
                        lasting);
        };
    }

    private static TieKey ofHeat(OptionNumbers numbers, double lasting) {
        Optional<HeatSpread> spread =
                numbers.heat().flatMap(HeatOutlook::proposed).map(ProposedSetting::spread);
        return new TieKey(
                spread.map(found -> share(found.delayedProbability())).orElse(TieKey.WORST.deathShare()),
                spread.map(found -> share(found.charProbability())).orElse(TieKey.WORST.charShare()),
                spread.flatMap(HeatSpread::nerve)
                        .map(warmed -> Math.rint(TENTHS * warmed.peakC().p90()) / TENTHS)
                        .orElse(TieKey.WORST.nerveC()),
                lasting);
    }

    private static double share(double exact) {
        return Math.rint(PER_MILLE * exact) / PER_MILLE;
    }

    /** Share of the depths the drug may reach, all between the ends of its range alike, that are the wall or more. */
    private static double reaches(Technique technique, OptionNumbers numbers) {
        Quantity depth = technique.quantity("killDepthMm");
        double low = depth.low().orElse(depth.value());
        double high = depth.high().orElse(depth.value());
        double wallMm = numbers.wallAtWorkMm().orElse(Double.POSITIVE_INFINITY);
        if (low == high) {
            return wallMm <= low ? 1 : 0;
        }
        return Math.max(0, Math.min(1, (high - wallMm) / (high - low)));
    }
}
