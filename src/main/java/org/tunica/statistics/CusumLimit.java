package org.tunica.statistics;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * The least limit of a chart, in thousandths, at which false alarms are as seldom as wished, found by simulation: no table of
 * limits fits the mix of cases of one place.
 *
 * @param limit to be set as worseLimit or betterLimit of a {@link CusumDesign}
 * @param wish what was asked for
 * @param reached what the simulated runs did at this limit
 */
public record CusumLimit(double limit, CusumWish wish, CusumWish.Reached reached) {
    private static final double STEPS_PER_UNIT = 1000;

    /** A chart needs a multiple of the cases for each unit more, so the search climbs in short stages. */
    private static final int STAGE = 125;

    /** @param oddsRatio what the chart watches for: greater than 1 worse results, less than 1 better ones */
    public static CusumLimit of(CusumWish wish, double oddsRatio, InControl inControl) {
        List<InControlRun> runs = runs(wish, new CusumWeight(oddsRatio), inControl);
        int seldom = STAGE;
        while (!wish.met(reached(wish, runs, seldom))) {
            seldom += STAGE;
        }
        int tooOften = seldom - STAGE;
        while (seldom - tooOften > 1) {
            int middle = (seldom + tooOften) / 2;
            if (wish.met(reached(wish, runs, middle))) {
                seldom = middle;
            } else {
                tooOften = middle;
            }
        }
        return new CusumLimit(seldom / STEPS_PER_UNIT, wish, reached(wish, runs, seldom));
    }

    private static List<InControlRun> runs(CusumWish wish, CusumWeight weight, InControl inControl) {
        WeightedMix mix = WeightedMix.of(inControl.failureProbabilities(), weight);
        SplittableRandom seeds = new SplittableRandom(inControl.seed());
        return IntStream.range(0, inControl.runs())
                .mapToObj(run -> new InControlRun(mix, wish.horizonCases(), seeds.split()))
                .toList();
    }

    private static CusumWish.Reached reached(CusumWish wish, List<InControlRun> runs, int thousandths) {
        double limit = thousandths / STEPS_PER_UNIT;
        return wish.reached(
                runs.stream().mapToInt(run -> run.signalledAt(limit)).toArray());
    }
}
