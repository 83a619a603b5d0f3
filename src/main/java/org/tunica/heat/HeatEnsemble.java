package org.tunica.heat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;

/**
 * The heat model over all that is not known: constants drawn over their ranges in knowledge/ (see {@code Draws}) and
 * measurements over their errors. Same numbers, seed and input: same result, bit for bit. Safe to share between threads.
 *
 * <p>The start temperature is shifted by the draw of its usual value; a draw beyond the range the model answers for is
 * taken at its edge.
 */
public final class HeatEnsemble {
    private static final String START = "tissue.tumescent.temperature";

    private final List<Draw> draws;

    /** One model with the constants drawn for it, and the deviates of the measurements that go with it. */
    private record Draw(HeatModel model, double startShiftC, double wall, double tumescent, double nerve, double skin) {
        private VeinSlice of(VeinSlice slice, MeasurementSpread spread) {
            Validity validity = model.validity();
            return new VeinSlice(
                    kept(validity.wall(), slice.wallMm() + wall * spread.wallSdMm()),
                    kept(validity.tumescent(), slice.tumescentMm() + tumescent * spread.tumescentSdMm()),
                    kept(validity.start(), slice.tumescentC() + startShiftC),
                    slice.filmMm(),
                    slice.bloodFraction(),
                    gap(slice.nerveGapMm(), nerve * spread.nerveGapSdMm()),
                    gap(slice.skinGapMm(), skin * spread.skinGapSdMm()));
        }

        private static double kept(Validity.Range range, double drawn) {
            return Math.max(range.min(), Math.min(range.max(), drawn));
        }

        private static OptionalDouble gap(OptionalDouble measuredMm, double errorMm) {
            return measuredMm.isEmpty()
                    ? measuredMm
                    : OptionalDouble.of(Math.max(0, measuredMm.getAsDouble() + errorMm));
        }
    }

    private HeatEnsemble(List<Draw> draws) {
        this.draws = draws;
    }

    /**
     * Draws the constants once; {@link #run} then repeats a setting over them.
     *
     * @param numbers constants and their ranges
     * @param count number of draws, 64 to 128 for a displayed result
     * @param seed fixes the draws
     * @param fineness steps and shells of every run
     */
    public static HeatEnsemble of(HeatNumbers numbers, int count, long seed, Fineness fineness) {
        Checks.positive("count", count);
        Draws source = new Draws(count, seed);
        Map<String, double[]> drawn = new HashMap<>();
        for (String id : uncertain(numbers)) {
            drawn.put(
                    id,
                    source.within(
                            numbers.low().applyAsDouble(id),
                            numbers.value().applyAsDouble(id),
                            numbers.high().applyAsDouble(id)));
        }
        double[][] deviates = {source.normal(), source.normal(), source.normal(), source.normal()};
        List<Draw> draws = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            draws.add(draw(numbers, drawn, deviates, i, fineness));
        }
        return new HeatEnsemble(List.copyOf(draws));
    }

    /** The constants that have a range, in the order of their ids so that the seed decides alone. */
    private static Set<String> uncertain(HeatNumbers numbers) {
        Set<String> ids = new TreeSet<>();
        HeatConstants.from(id -> {
            if (numbers.low().applyAsDouble(id) < numbers.high().applyAsDouble(id)) {
                ids.add(id);
            }
            return numbers.value().applyAsDouble(id);
        });
        return ids;
    }

    private static Draw draw(
            HeatNumbers numbers, Map<String, double[]> drawn, double[][] deviates, int i, Fineness fineness) {
        ToDoubleFunction<String> number =
                id -> drawn.containsKey(id) ? drawn.get(id)[i] : numbers.value().applyAsDouble(id);
        return new Draw(
                HeatModel.of(HeatConstants.from(number), fineness),
                number.applyAsDouble(START) - numbers.value().applyAsDouble(START),
                deviates[0][i],
                deviates[1][i],
                deviates[2][i],
                deviates[3][i]);
    }

    /** The first few of these draws, for searching. */
    HeatEnsemble first(int count) {
        return new HeatEnsemble(draws.subList(0, Math.min(count, draws.size())));
    }

    /** Number of draws. */
    public int size() {
        return draws.size();
    }

    /**
     * Repeats one setting on one slice.
     *
     * @throws IllegalArgumentException as {@link HeatModel#run(HeatSetting, VeinSlice)}
     */
    public HeatSpread run(HeatSetting setting, VeinSlice slice, MeasurementSpread spread) {
        return HeatSpread.of(
                setting,
                draws.stream()
                        .map(draw -> draw.model().run(setting, checked(draw, slice, spread)))
                        .toList());
    }

    /** Repeats one setting on one slice for a given contact. */
    HeatSpread run(HeatSetting setting, VeinSlice slice, MeasurementSpread spread, Contact contact) {
        return HeatSpread.of(
                setting,
                draws.stream()
                        .map(draw -> draw.model().run(setting, checked(draw, slice, spread), contact))
                        .toList());
    }

    private static VeinSlice checked(Draw draw, VeinSlice slice, MeasurementSpread spread) {
        slice.checkAgainst(draw.model().validity());
        return draw.of(slice, spread);
    }
}
