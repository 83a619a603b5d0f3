package org.tunica.heat;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * One setting on one slice over all that is not known. Show the probabilities with their number of draws, never a bare
 * yes or no.
 *
 * @param setting what was set
 * @param draws number of draws
 * @param killProbability share of draws in which the whole wall dies at once
 * @param delayedProbability share of draws in which the whole wall dies at once or later
 * @param charProbability share of draws in which charring starts
 * @param killDepthMm depth of immediate death
 * @param killDepthPerWall the same in walls
 * @param delayedDepthPerWall depth of delayed death in walls
 * @param perforationIndex drying of the whole wall
 * @param nerve warmth of the nerve, when the slice has one
 * @param skin warmth of the skin, when the slice has one
 */
public record HeatSpread(
        HeatSetting setting,
        int draws,
        double killProbability,
        double delayedProbability,
        double charProbability,
        Interval killDepthMm,
        Interval killDepthPerWall,
        Interval delayedDepthPerWall,
        Interval perforationIndex,
        Optional<WarmedSpread> nerve,
        Optional<WarmedSpread> skin) {

    static HeatSpread of(HeatSetting setting, List<HeatRun> runs) {
        return new HeatSpread(
                setting,
                runs.size(),
                share(runs, run -> run.killDepthPerWall() >= 1),
                share(runs, run -> run.wallFractionDelayed() >= 1),
                share(runs, HeatRun::chars),
                interval(runs, HeatRun::killDepthMm),
                interval(runs, HeatRun::killDepthPerWall),
                interval(runs, run -> run.delayedDepthMm() / run.wallMm()),
                interval(runs, HeatRun::perforationIndex),
                warmed(runs, HeatRun::nerve),
                warmed(runs, HeatRun::skin));
    }

    /**
     * The same with the depths in walls times a factor, for a wall that is another than was drawn around. The
     * probabilities are spread over the error of the wall already and stay.
     */
    public HeatSpread perWallTimes(double factor) {
        return new HeatSpread(
                setting,
                draws,
                killProbability,
                delayedProbability,
                charProbability,
                killDepthMm,
                killDepthPerWall.times(factor),
                delayedDepthPerWall.times(factor),
                perforationIndex,
                nerve,
                skin);
    }

    private static double share(List<HeatRun> runs, Predicate<HeatRun> holds) {
        return (double) runs.stream().filter(holds).count() / runs.size();
    }

    private static Interval interval(List<HeatRun> runs, ToDoubleFunction<HeatRun> number) {
        return Interval.of(runs.stream().mapToDouble(number).toArray());
    }

    private static Optional<WarmedSpread> warmed(List<HeatRun> runs, Function<HeatRun, Optional<WarmedPoint>> point) {
        if (point.apply(runs.get(0)).isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new WarmedSpread(
                interval(runs, run -> point.apply(run).orElseThrow().peakC()),
                interval(runs, run -> point.apply(run).orElseThrow().cem43Min())));
    }
}
