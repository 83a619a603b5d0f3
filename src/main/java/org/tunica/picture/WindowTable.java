package org.tunica.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.Function;
import org.tunica.heat.HeatRun;
import org.tunica.heat.HeatWindow;
import org.tunica.heat.SettingAxis;
import org.tunica.heat.WarmedPoint;
import org.tunica.heat.WindowLine;
import org.tunica.physics.SegmentWindow;

/** The table of a window: a few powers with their pull-backs, or every number of cycles or pulses. */
final class WindowTable {
    private static final int MOST_ROWS = 9;
    private static final double SAME_POWER_W = 1e-9;
    private static final String NOT_KNOWN = "?";

    private final SegmentWindow window;

    WindowTable(SegmentWindow window) {
        this.window = window;
    }

    List<String> header() {
        return window.map().isPresent()
                ? List.of("power", "dies at once or later", "dies at once", "char", "perforation", "nerve", "skin")
                : List.of(
                        "heated",
                        "dead at once or later",
                        "dead at once",
                        "char index",
                        "nerve C",
                        "nerve min",
                        "skin C",
                        "skin min");
    }

    List<List<String>> rows() {
        if (window.map().isEmpty()) {
            return window.repeats().stream().map(this::repeated).toList();
        }
        HeatWindow map = window.map().get();
        return shown(map.powerW()).stream().map(power -> row(map, power)).toList();
    }

    /** Powers at equal steps, and the one of the setting proposed. */
    private TreeSet<Integer> shown(SettingAxis powerW) {
        TreeSet<Integer> shown = new TreeSet<>();
        int stride = (powerW.count() + MOST_ROWS - 3) / (MOST_ROWS - 1);
        for (int i = 0; i < powerW.count(); i += stride) {
            shown.add(i);
        }
        for (int i = 0; i < powerW.count(); i++) {
            if (proposed(powerW.at(i))) {
                shown.add(i);
            }
        }
        return shown;
    }

    private boolean proposed(double powerW) {
        return Figures.proposedPulled(window)
                .filter(pulled -> Math.abs(pulled.powerW() - powerW) < SAME_POWER_W)
                .isPresent();
    }

    private List<String> row(HeatWindow map, int power) {
        double powerW = map.powerW().at(power);
        List<String> cells = new ArrayList<>();
        cells.add(Figures.number(powerW) + " W" + (proposed(powerW) ? " @" : "")
                + (powerW > window.powerW().value() ? " !" : ""));
        for (WindowLine line : WindowLine.values()) {
            cells.add(known(line) ? cell(map, line, power) : NOT_KNOWN);
        }
        return cells;
    }

    private boolean known(WindowLine line) {
        return switch (line) {
            case NERVE -> window.slice().nerveGapMm().isPresent();
            case SKIN -> window.slice().skinGapMm().isPresent();
            case DIES_LATER, DIES_AT_ONCE, CHAR, PERFORATION -> true;
        };
    }

    private static String cell(HeatWindow map, WindowLine line, int power) {
        OptionalDouble shortest = map.shortestSPerCm(line, power);
        if (shortest.isEmpty()) {
            return "> " + Figures.tenths(map.pullbackSPerCm().max());
        }
        double sPerCm = shortest.getAsDouble();
        if (sPerCm <= map.pullbackSPerCm().min()) {
            return "<= " + Figures.tenths(map.pullbackSPerCm().min());
        }
        long energyJPerCm = Math.round(sPerCm * map.powerW().at(power));
        return Figures.tenths(sPerCm) + (line.wished() ? " (" + energyJPerCm + ")" : "");
    }

    private List<String> repeated(HeatRun run) {
        boolean proposed = window.proposed()
                .filter(found -> found.setting().equals(run.setting()))
                .isPresent();
        return List.of(
                Figures.setting(run.setting()) + (proposed ? " @" : ""),
                Figures.percent(run.wallFractionDelayed()),
                Figures.percent(run.wallFractionKilled()),
                Figures.number(run.charIndex()),
                warmth(run.nerve(), WarmedPoint::peakC),
                warmth(run.nerve(), WarmedPoint::cem43Min),
                warmth(run.skin(), WarmedPoint::peakC),
                warmth(run.skin(), WarmedPoint::cem43Min));
    }

    private static String warmth(Optional<WarmedPoint> point, Function<WarmedPoint, Double> figure) {
        return point.map(figure).map(Figures::tenths).orElse(NOT_KNOWN);
    }
}
