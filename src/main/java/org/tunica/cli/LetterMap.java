package org.tunica.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tunica.heat.HeatSetting;
import org.tunica.heat.HeatWindow;
import org.tunica.heat.SettingAxis;
import org.tunica.heat.WindowLine;
import org.tunica.physics.SegmentWindow;
import org.tunica.wording.SettingWords;

/** A map of settings in plain ASCII: two letters for each setting, the first for what dies, the second for a harm. */
final class LetterMap {
    static final String KEY =
            "Across: power, W. Up: slower pullback, s/cm. First letter: K whole wall dies at once, d at"
                    + " once or later, . part of it stays alive. Second letter: c char, p perforation feared, n nerve or s skin"
                    + " past its red line, * several of these. @ setting to consider; | and - the ceilings of power and pullback."
                    + " J/cm = power x pullback.";

    private static final int MARGIN = 5;
    private static final int CELL = 3;
    private static final int MOST_ROWS = 20;
    private static final double SAME = 1e-9;

    private final SegmentWindow window;
    private final HeatWindow map;
    private final List<Integer> powers;
    private final List<Integer> pullbacks;

    LetterMap(SegmentWindow window, HeatWindow map, int width) {
        this.window = window;
        this.map = map;
        this.powers = places(map.powerW(), (width - MARGIN) / CELL, pulled().map(HeatSetting.Pulled::powerW));
        this.pullbacks = places(map.pullbackSPerCm(), MOST_ROWS, pulled().map(HeatSetting.Pulled::pullbackSPerCm));
    }

    private Optional<HeatSetting.Pulled> pulled() {
        return window.proposed().map(found -> (HeatSetting.Pulled) found.setting());
    }

    /** Places at equal steps, no more than fit with the one wished among them. */
    private static List<Integer> places(SettingAxis axis, int fit, Optional<Double> wished) {
        int stride = (axis.count() + fit - 3) / (fit - 2);
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < axis.count(); i++) {
            double value = axis.at(i);
            if (i % stride == 0 || wished.filter(want -> same(want, value)).isPresent()) {
                places.add(i);
            }
        }
        return places;
    }

    /** The lines of the map, the slowest pull-back first. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add("s/cm");
        double ceiling = window.pullbackSPerCm().value();
        double slower = Double.POSITIVE_INFINITY;
        for (int i = pullbacks.size() - 1; i >= 0; i--) {
            double here = map.pullbackSPerCm().at(pullbacks.get(i));
            if (here <= ceiling + SAME && slower > ceiling + SAME) {
                lines.add(" ".repeat(MARGIN) + "-".repeat(CELL * powers.size()));
            }
            lines.add(line(pullbacks.get(i)));
            slower = here;
        }
        lines.add(axis());
        return lines;
    }

    private String line(int pullback) {
        StringBuilder line = new StringBuilder(String.format(
                Locale.ROOT, "%4s ", SettingWords.plain(map.pullbackSPerCm().at(pullback))));
        boolean below = true;
        for (int power : powers) {
            boolean beyond = map.powerW().at(power) > window.powerW().value() + SAME;
            line.append(mark(power, pullback, below && beyond)).append(letters(power, pullback));
            below = !beyond;
        }
        return line.toString().stripTrailing();
    }

    private char mark(int power, int pullback, boolean ceiling) {
        boolean proposed = pulled().filter(found -> same(
                                found.powerW(), map.powerW().at(power))
                        && same(found.pullbackSPerCm(), map.pullbackSPerCm().at(pullback)))
                .isPresent();
        return proposed ? '@' : ceiling ? '|' : ' ';
    }

    private String letters(int power, int pullback) {
        String dies = map.reached(WindowLine.DIES_AT_ONCE, power, pullback)
                ? "K"
                : map.reached(WindowLine.DIES_LATER, power, pullback) ? "d" : ".";
        StringBuilder harms = new StringBuilder();
        for (WindowLine line : WindowLine.values()) {
            if (!line.wished() && map.reached(line, power, pullback)) {
                harms.append(harm(line));
            }
        }
        return dies + (harms.length() > 1 ? "*" : harms.isEmpty() ? " " : harms);
    }

    private static char harm(WindowLine line) {
        return switch (line) {
            case CHAR -> 'c';
            case PERFORATION -> 'p';
            case NERVE -> 'n';
            case SKIN -> 's';
            case DIES_LATER, DIES_AT_ONCE -> throw new IllegalArgumentException("no harm: " + line);
        };
    }

    /** Powers beneath their columns, those left out that would touch the one before. */
    private String axis() {
        StringBuilder axis = new StringBuilder("   W ");
        for (int i = 0; i < powers.size(); i++) {
            String power = SettingWords.plain(map.powerW().at(powers.get(i)));
            int column = MARGIN + i * CELL + 1;
            if (axis.length() < column || i == 0) {
                axis.append(" ".repeat(column - axis.length())).append(power);
            }
        }
        return axis.toString();
    }

    private static boolean same(double one, double other) {
        return Math.abs(one - other) < SAME;
    }
}
