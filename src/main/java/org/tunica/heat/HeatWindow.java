package org.tunica.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * What every power and pull-back of a device does to one slice: a run of the heat model at each node of a grid, and the
 * lines between. It holds for the constants as they stand; how far a real vein may lie off a line tells only a {@link
 * HeatSpread}. Immutable.
 *
 * <p>A line gives, for each power, the shortest pull-back that reaches it, straight between two nodes. Where a model
 * curve is ragged the line errs to the careful side: a harm counts from its first node, a kill only when every slower
 * node kills as well.
 */
public final class HeatWindow {
    /** The map goes a third beyond the ceilings, so that what lies behind them is seen. */
    private static final double BEYOND = 4.0 / 3;

    private final HeatLimits limits;
    private final SettingAxis powerW;
    private final SettingAxis pullbackSPerCm;
    private final List<List<HeatRun>> columns;

    private HeatWindow(HeatLimits limits, SettingAxis powerW, SettingAxis pullbackSPerCm, List<List<HeatRun>> columns) {
        this.limits = limits;
        this.powerW = powerW;
        this.pullbackSPerCm = pullbackSPerCm;
        this.columns = columns;
    }

    /** A corner of a line. */
    public record Node(double powerW, double pullbackSPerCm) {}

    /**
     * Runs the map, on all cores of the machine; the same input gives the same map.
     *
     * @param usedPowerW the highest power in use with the device, or 0 when that is not above the ceiling
     * @throws IllegalArgumentException for a device that is not drawn back, or an input the model refuses
     */
    public static HeatWindow of(
            HeatModel model, HeatLimits limits, String deviceId, VeinSlice slice, double usedPowerW) {
        Checks.notNegative("usedPowerW", usedPowerW);
        Validity validity = model.validity();
        double highestW = BEYOND * Math.max(limits.powerW().max(), usedPowerW);
        double slowest = BEYOND * limits.pullbackSPerCm().max();
        return of(
                model,
                limits,
                deviceId,
                slice,
                SettingAxis.upTo(Math.min(highestW, validity.power().max()), limits.powerW()),
                SettingAxis.upTo(Math.min(slowest, validity.pullback().max()), limits.pullbackSPerCm()));
    }

    static HeatWindow of(
            HeatModel model,
            HeatLimits limits,
            String deviceId,
            VeinSlice slice,
            SettingAxis powerW,
            SettingAxis pullbackSPerCm) {
        int rows = pullbackSPerCm.count();
        List<HeatRun> runs = IntStream.range(0, powerW.count() * rows)
                .parallel()
                .mapToObj(i -> new HeatSetting.Pulled(deviceId, powerW.at(i / rows), pullbackSPerCm.at(i % rows)))
                .map(setting -> model.run(setting, slice))
                .toList();
        List<List<HeatRun>> columns = IntStream.range(0, powerW.count())
                .mapToObj(i -> runs.subList(i * rows, (i + 1) * rows))
                .toList();
        return new HeatWindow(limits, powerW, pullbackSPerCm, columns);
    }

    /** Powers of the map, W. */
    public SettingAxis powerW() {
        return powerW;
    }

    /** Pull-backs of the map, s/cm. */
    public SettingAxis pullbackSPerCm() {
        return pullbackSPerCm;
    }

    /** The run at a node. */
    public HeatRun run(int power, int pullback) {
        return columns.get(power).get(pullback);
    }

    /** Whether the run at a node has reached a line. */
    public boolean reached(WindowLine line, int power, int pullback) {
        return excess(line, power, pullback) >= 0;
    }

    /**
     * Shortest pull-back in s/cm at which a power reaches a line; the first of the map when that does, empty when none
     * of the map does.
     */
    public OptionalDouble shortestSPerCm(WindowLine line, int power) {
        int first = firstRow(line, power);
        if (first == pullbackSPerCm.count()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(
                first == 0
                        ? pullbackSPerCm.min()
                        : between(
                                pullbackSPerCm.at(first - 1),
                                excess(line, power, first - 1),
                                pullbackSPerCm.at(first),
                                excess(line, power, first)));
    }

    private int firstRow(WindowLine line, int power) {
        int rows = pullbackSPerCm.count();
        if (!line.wished()) {
            return IntStream.range(0, rows)
                    .filter(row -> reached(line, power, row))
                    .findFirst()
                    .orElse(rows);
        }
        int first = rows;
        while (first > 0 && reached(line, power, first - 1)) {
            first--;
        }
        return first;
    }

    /**
     * The lower border of the settings that reach a line, from low to high power; several pieces when powers between do
     * not reach it. It follows the edge of the map where the line lies outside.
     */
    public List<List<Node>> border(WindowLine line) {
        List<List<Node>> pieces = new ArrayList<>();
        List<Node> piece = new ArrayList<>();
        for (int i = 0; i < powerW.count(); i++) {
            OptionalDouble here = shortestSPerCm(line, i);
            if (here.isPresent()) {
                enter(line, i, piece);
                piece.add(new Node(powerW.at(i), here.getAsDouble()));
            } else if (!piece.isEmpty()) {
                edge(line, i - 1, pullbackSPerCm.count() - 1, piece);
                pieces.add(piece);
                piece = new ArrayList<>();
            }
        }
        if (!piece.isEmpty()) {
            pieces.add(piece);
        }
        return pieces;
    }

    /** The way from the power before to this one, where it crosses the slow or the fast edge of the map. */
    private void enter(WindowLine line, int power, List<Node> piece) {
        if (power == 0) {
            return;
        }
        if (piece.isEmpty()) {
            edge(line, power - 1, pullbackSPerCm.count() - 1, piece);
        }
        edge(line, power - 1, 0, piece);
    }

    /** Adds the place between a power and the next where an edge of the map crosses the line, if it does. */
    private void edge(WindowLine line, int power, int row, List<Node> piece) {
        double here = excess(line, power, row);
        double next = excess(line, power + 1, row);
        if (here >= 0 != next >= 0) {
            piece.add(new Node(between(powerW.at(power), here, powerW.at(power + 1), next), pullbackSPerCm.at(row)));
        }
    }

    private double excess(WindowLine line, int power, int pullback) {
        return line.excess(run(power, pullback), limits);
    }

    /** Where a straight line from one excess to another passes 0. */
    private static double between(double from, double fromExcess, double to, double toExcess) {
        return from + (to - from) * fromExcess / (fromExcess - toExcess);
    }
}
