package org.tunica.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tunica.heat.HeatFlag;
import org.tunica.heat.HeatLimits;
import org.tunica.heat.HeatRun;
import org.tunica.heat.HeatSpread;
import org.tunica.heat.HeatWindow;
import org.tunica.heat.ProposedSetting;
import org.tunica.heat.SettingLimit;
import org.tunica.heat.WindowLine;
import org.tunica.physics.SegmentWindow;

/** The sentences beneath a window. */
final class WindowNotes {
    private final SegmentWindow window;

    WindowNotes(SegmentWindow window) {
        this.window = window;
    }

    List<String> all() {
        List<String> notes = new ArrayList<>();
        notes.add(proposed());
        notes.add(window.map().map(this::howToRead).orElseGet(this::repeats));
        notes.add(
                neighbour("Nerve", window.slice().nerveGapMm(), window.limits().nerve(), WindowLine.NERVE));
        notes.add(neighbour("Skin", window.slice().skinGapMm(), window.limits().skin(), WindowLine.SKIN));
        if (window.tipLeans()) {
            notes.add("The tip is taken as leaning on one side: death of the wall counts on the far side, char,"
                    + " perforation and warmth on the near side.");
        }
        window.map().ifPresent(map -> notes.add(ceilings()));
        notes.add("Lines and figures are those of a heat model with its constants as they stand, for usual tumescence"
                + " and an emptied vein; a real vein may lie to either side, which only the draws tell. "
                + calibration());
        return notes;
    }

    private String proposed() {
        ProposedSetting proposed = window.proposed();
        HeatSpread spread = proposed.spread();
        return (proposed.killsAsWished() && proposed.staysWithinLimits()
                        ? "@ Setting to consider: "
                        : falling(proposed))
                + Figures.setting(proposed.setting()) + ". Of " + spread.draws()
                + " draws over what is not known, the whole wall dies at once in "
                + Figures.percent(spread.killProbability()) + ", at once or later in "
                + Figures.percent(spread.delayedProbability()) + "; it chars in "
                + Figures.percent(spread.charProbability()) + ". " + stopped(proposed.limit());
    }

    private String falling(ProposedSetting proposed) {
        String wished = Figures.percent(window.limits().wishedKillProbability());
        return proposed.staysWithinLimits()
                ? "No setting accepted kills the whole wall at once in " + wished
                        + " of the draws without harm. @ The nearest without harm: "
                : "No setting accepted is without likely harm. @ The least harmful: ";
    }

    private static String stopped(SettingLimit limit) {
        return switch (limit) {
            case CHAR -> "A stronger one would be likely to char.";
            case PERFORATION -> "With a stronger one perforation is feared.";
            case NERVE -> "A stronger one would warm the nerve past its red line.";
            case SKIN -> "A stronger one would warm the skin past its red line.";
            case LONGEST_TIME -> "A stronger one would take longer than is accepted.";
            case HIGHEST_POWER -> "A stronger one would need more power than is accepted.";
        };
    }

    private String howToRead(HeatWindow map) {
        String from = Figures.tenths(map.pullbackSPerCm().min());
        String to = Figures.tenths(map.pullbackSPerCm().max());
        return "Table: for each power the shortest pullback in s/cm (in brackets power x pullback, J/cm) at which the"
                + " whole wall dies at once or later, or at once; and the shortest that reaches a harm. <= " + from
                + ": already at the fastest pullback computed; > " + to + ": not up to the slowest; ?: not recorded;"
                + " @: power of the setting to consider; !: above the power ceiling.";
    }

    private String repeats() {
        return "This device leaves neither power nor pullback to choose: its generator holds them, and only the number"
                + " of " + (isSteam() ? "pulses" : "cycles") + " is yours. So there is no map. Table: share of the wall"
                + " that dies; char index (charring starts at 1); peak temperature and equivalent minutes at 43 C of"
                + " nerve and skin; ?: not recorded; @: setting to consider.";
    }

    private boolean isSteam() {
        return window.proposed().setting() instanceof org.tunica.heat.HeatSetting.Pulsed;
    }

    private String neighbour(String what, OptionalDouble gapMm, HeatLimits.Warmth warmth, WindowLine line) {
        if (gapMm.isEmpty()) {
            return what
                    + ": THE GAP IS NOT RECORDED, so no line is drawn and no figure given. That does not mean safe.";
        }
        String red = "red line " + Figures.number(warmth.redPeakC()) + " C or " + Figures.number(warmth.redCem43Min())
                + " equivalent minutes at 43 C";
        boolean beyond = window.map().map(map -> map.border(line).isEmpty()).orElse(false);
        return what + " " + Figures.mm(gapMm.getAsDouble()) + " from the wall, before tumescence; " + red
                + (beyond ? ", reached nowhere on this map." : ".");
    }

    private String ceilings() {
        return "Ceilings: " + Figures.number(window.powerW().value()) + " W ("
                + window.powerW().origin() + ") and "
                + Figures.number(window.pullbackSPerCm().value()) + " s/cm ("
                + window.pullbackSPerCm().origin() + ").";
    }

    private String calibration() {
        if (runs().allMatch(run -> run.flags().contains(HeatFlag.NOT_CALIBRATED))) {
            return "No bench fact was compared for this device: trust it less.";
        }
        double[] powerW = tried(run -> pulled(run).powerW());
        double[] pullback = tried(run -> pulled(run).pullbackSPerCm());
        return "Bench facts of the trade were compared from " + Figures.number(powerW[0]) + " to "
                + Figures.number(powerW[1]) + " W and from " + Figures.number(pullback[0]) + " to "
                + Figures.number(pullback[1]) + " s/cm of this map; no patient was.";
    }

    private static org.tunica.heat.HeatSetting.Pulled pulled(HeatRun run) {
        return (org.tunica.heat.HeatSetting.Pulled) run.setting();
    }

    /** Smallest and largest value among the settings the calibration looked at. */
    private double[] tried(java.util.function.ToDoubleFunction<HeatRun> value) {
        java.util.DoubleSummaryStatistics tried = runs().filter(
                        run -> !run.flags().contains(HeatFlag.OUTSIDE_CALIBRATION))
                .mapToDouble(value)
                .summaryStatistics();
        return new double[] {tried.getMin(), tried.getMax()};
    }

    private Stream<HeatRun> runs() {
        return window.map()
                .map(map -> IntStream.range(0, map.powerW().count())
                        .boxed()
                        .flatMap(i ->
                                IntStream.range(0, map.pullbackSPerCm().count()).mapToObj(j -> map.run(i, j))))
                .orElseGet(() -> window.repeats().stream());
    }
}
