package org.tunica.plan;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.tunica.heat.HeatSpread;
import org.tunica.heat.ProposedSetting;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.PublishedRate;
import org.tunica.knowledge.Quantity;
import org.tunica.knowledge.Technique;
import org.tunica.physics.HeatOutlook;
import org.tunica.physics.OptionNumbers;
import org.tunica.rules.Considered;

/** Reads what settles ties from computed numbers and published rates, rounded as a reader sees them. */
final class TieKeys {
    private final double bodyC;

    /** Mean rate by technique and vein, every source counted alike. */
    private final Map<String, Double> durability = new HashMap<>();

    TieKeys(Knowledge knowledge) {
        this.bodyC = knowledge.value("tissue.body.temperature");
        Map<String, Integer> sources = new HashMap<>();
        for (PublishedRate rate : knowledge.rates().values()) {
            for (String technique : rate.techniques()) {
                for (String vein : rate.veins()) {
                    durability.merge(place(technique, vein), rate.share(), Double::sum);
                    sources.merge(place(technique, vein), 1, Integer::sum);
                }
            }
        }
        durability.replaceAll((place, sum) -> Rounded.of(sum / sources.get(place)));
    }

    private static String place(String technique, String vein) {
        return technique + " " + vein;
    }

    TieKey of(Considered option) {
        Technique technique = option.technique();
        OptionNumbers numbers = option.derived().options().get(technique.id());
        double lasting = durability.getOrDefault(
                place(technique.id(), option.segment().vein().word()), 0.0);
        return switch (technique.family()) {
            case HEAT -> ofHeat(numbers, lasting);
            case ADHESIVE -> new TieKey(0, 0, bodyC, lasting);
            case FOAM, MECHANOCHEMICAL -> new TieKey(Rounded.of(reaches(technique, numbers)), 0, bodyC, lasting);
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
                spread.map(found -> Rounded.of(found.delayedProbability())).orElse(TieKey.WORST.deathShare()),
                spread.map(found -> Rounded.of(found.charProbability())).orElse(TieKey.WORST.charShare()),
                spread.flatMap(HeatSpread::nerve)
                        .map(warmed -> Rounded.of(warmed.peakC().p90()))
                        .orElse(TieKey.WORST.nerveC()),
                lasting);
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
