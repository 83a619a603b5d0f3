package org.tunica.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.tunica.heat.HeatRun;
import org.tunica.heat.HeatSpread;
import org.tunica.heat.Interval;
import org.tunica.heat.ProposedSetting;
import org.tunica.heat.WarmedPoint;
import org.tunica.knowledge.Technique;
import org.tunica.physics.HeatOutlook;
import org.tunica.physics.OptionNumbers;

/** Writes what the computed models foresee into the advice. */
final class Forecasting {
    private Forecasting() {}

    static Predicted predicted(Technique technique, OptionNumbers numbers) {
        Optional<ProposedSetting> proposed = numbers.heat().flatMap(HeatOutlook::proposed);
        Optional<HeatRun> run = proposed.map(ProposedSetting::run);
        return new Predicted(
                Rounded.of(numbers.wallAtWorkMm()),
                Rounded.of(numbers.wallFractionKilled()),
                of(run, HeatRun::wallFractionKilled),
                of(run, HeatRun::killDepthMm),
                of(run, HeatRun::charIndex),
                of(run, HeatRun::perforationIndex),
                at(run, HeatRun::nerve, WarmedPoint::peakC),
                at(run, HeatRun::nerve, WarmedPoint::cem43Min),
                at(run, HeatRun::skin, WarmedPoint::peakC),
                at(run, HeatRun::skin, WarmedPoint::cem43Min),
                numbers.bloodless(),
                proposed.map(Forecasting::forecast),
                says(technique, numbers));
    }

    private static OptionalDouble of(Optional<HeatRun> run, ToDoubleFunction<HeatRun> read) {
        return run.map(known -> OptionalDouble.of(Rounded.of(read.applyAsDouble(known))))
                .orElse(OptionalDouble.empty());
    }

    private static OptionalDouble at(
            Optional<HeatRun> run, Function<HeatRun, Optional<WarmedPoint>> where, ToDoubleFunction<WarmedPoint> read) {
        return run.flatMap(where)
                .map(point -> OptionalDouble.of(Rounded.of(read.applyAsDouble(point))))
                .orElse(OptionalDouble.empty());
    }

    private static Predicted.HeatForecast forecast(ProposedSetting proposed) {
        HeatSpread spread = proposed.spread();
        return new Predicted.HeatForecast(
                word(proposed.death()),
                Rounded.of(spread.killProbability()),
                Rounded.of(spread.delayedProbability()),
                Rounded.of(spread.charProbability()),
                spread.draws(),
                proposed.staysWithinLimits(),
                word(proposed.limit()),
                proposed.run().flags().stream().map(Forecasting::word).sorted().toList(),
                spreads(spread));
    }

    private static List<Predicted.Spread> spreads(HeatSpread spread) {
        List<Predicted.Spread> spreads = new ArrayList<>();
        spreads.add(spread("depth dead at once", spread.killDepthMm(), "mm"));
        spreads.add(spread("depth dead at once in walls", spread.killDepthPerWall(), "1"));
        spreads.add(spread("depth dead at once or later in walls", spread.delayedDepthPerWall(), "1"));
        spread.nerve().ifPresent(nerve -> {
            spreads.add(spread("peak at the nerve", nerve.peakC(), "Cel"));
            spreads.add(spread("heat dose at the nerve", nerve.cem43Min(), "min"));
        });
        spread.skin().ifPresent(skin -> {
            spreads.add(spread("peak at the skin", skin.peakC(), "Cel"));
            spreads.add(spread("heat dose at the skin", skin.cem43Min(), "min"));
        });
        return spreads;
    }

    private static Predicted.Spread spread(String of, Interval interval, String unit) {
        return new Predicted.Spread(
                of, Rounded.of(interval.p10()), Rounded.of(interval.p50()), Rounded.of(interval.p90()), unit);
    }

    private static String says(Technique technique, OptionNumbers numbers) {
        return switch (technique.family()) {
            case HEAT -> heatSays(numbers);
            case ADHESIVE -> "an adhesive closes without killing the wall; no share is computed";
            case FOAM, MECHANOCHEMICAL, FOCUSED_ULTRASOUND ->
                numbers.wallFractionKilled().isPresent()
                        ? "share of the wall that is reached"
                        : "cannot be computed from what is recorded";
        };
    }

    private static String heatSays(OptionNumbers numbers) {
        if (numbers.heat().isEmpty()) {
            return "cannot be computed from what is recorded";
        }
        HeatOutlook outlook = numbers.heat().get();
        return outlook.proposed().isPresent()
                ? "computed at the setting proposed, with the gaps to nerve and skin as recorded"
                : outlook.silence();
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
