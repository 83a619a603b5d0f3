package org.tunica.picture;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tunica.heat.HeatFlag;
import org.tunica.heat.HeatLimits;
import org.tunica.heat.HeatRun;
import org.tunica.heat.HeatSetting;
import org.tunica.heat.HeatSpread;
import org.tunica.heat.HeatWindow;
import org.tunica.heat.ProposedSetting;
import org.tunica.heat.WarmedPoint;
import org.tunica.physics.SegmentWindow;

/** The sentences beneath a window. */
final class WindowNotes {
    private final SegmentWindow window;

    WindowNotes(SegmentWindow window) {
        this.window = window;
    }

    /** What the table tells. */
    String caption() {
        return window.map().map(WindowNotes::howToRead).orElseGet(this::repeats);
    }

    List<String> all() {
        List<String> notes = new ArrayList<>();
        window.standing().ifPresent(notes::add);
        notes.add(proposed());
        notes.addAll(window.assumed());
        notes.add(
                neighbour("Nerve", window.slice().nerveGapMm(), window.limits().nerve(), HeatRun::nerve));
        notes.add(neighbour("Skin", window.slice().skinGapMm(), window.limits().skin(), HeatRun::skin));
        if (window.tipLeans()) {
            notes.add("The tip is taken as leaning on one side: death of the wall counts on the far side, char,"
                    + " perforation and warmth on the near side.");
        }
        notes.add("The map asks only what the heat does; whether the technique may be used here is for the advice.");
        window.map().ifPresent(map -> notes.add(ceilings()));
        notes.add("Lines and figures are those of a heat model with its constants as they stand; a real vein may lie to"
                + " either side, which only the draws tell. " + ragged() + blood() + calibration());
        return notes;
    }

    private String proposed() {
        if (window.proposed().isEmpty()) {
            return "No setting is proposed: something it rests on is not recorded, or the advice does not rank the"
                    + " technique.";
        }
        ProposedSetting proposed = window.proposed().get();
        HeatSpread spread = proposed.spread();
        return heading(proposed) + Figures.setting(proposed.setting()) + ". Of " + spread.draws()
                + " draws over what is not known, the whole wall dies at once in "
                + Figures.percent(spread.killProbability()) + ", at once or later in "
                + Figures.percent(spread.delayedProbability()) + "; it chars in "
                + Figures.percent(spread.charProbability()) + "." + stopped(proposed)
                + (proposed.staysWithinLimits() ? "" : " It does not keep every limit.");
    }

    private String heading(ProposedSetting proposed) {
        String wished = Figures.percent(window.limits().wishedKillProbability()) + " of the draws";
        return switch (proposed.death()) {
            case AT_ONCE -> "@ Setting to consider: ";
            case AT_ONCE_OR_LATER ->
                "No setting within the limits kills the whole wall at once in " + wished
                        + ". @ Setting to consider, with death at once or later: ";
            case NOT_THROUGH -> "No setting within the limits kills the whole wall in " + wished + ". @ The nearest: ";
        };
    }

    private static String stopped(ProposedSetting proposed) {
        boolean pulled = proposed.setting() instanceof HeatSetting.Pulled;
        return switch (proposed.limit()) {
            case CHAR -> " A stronger one would be likely to char.";
            case PERFORATION -> " With a stronger one perforation is feared.";
            case NERVE -> " A stronger one would warm the nerve past its red line.";
            case SKIN -> " A stronger one would warm the skin past its red line.";
            case LONGEST_TIME ->
                pulled ? " A stronger one would take longer than is accepted." : " More are not accepted.";
            case HIGHEST_POWER -> pulled ? " A stronger one would need more power than is accepted." : "";
        };
    }

    private static String howToRead(HeatWindow map) {
        String from = Figures.tenths(map.pullbackSPerCm().min());
        String to = Figures.tenths(map.pullbackSPerCm().max());
        return "For each power the shortest pullback, s/cm (in brackets power x pullback, J/cm), at which the whole wall"
                + " dies, and the shortest at which a harm begins. <= " + from + ": already at the fastest computed; > "
                + to + ": not even at the slowest; ?: not recorded; @: power of the setting to consider; !: above the"
                + " power ceiling.";
    }

    private String repeats() {
        return "This device leaves neither power nor pullback to choose: its generator holds them, and only the number"
                + " of " + (isSteam() ? "pulses" : "cycles")
                + " is yours. So there is no map. Share of the wall that is"
                + " dead; char index (charring starts at 1); peak temperature and equivalent minutes at 43 C of"
                + " nerve and skin; ?: not recorded; @: setting to consider.";
    }

    private boolean isSteam() {
        return window.repeats().get(0).setting() instanceof HeatSetting.Pulsed;
    }

    private String neighbour(
            String what,
            OptionalDouble gapMm,
            HeatLimits.Warmth warmth,
            Function<HeatRun, Optional<WarmedPoint>> warmed) {
        if (gapMm.isEmpty()) {
            return what
                    + ": THE GAP IS NOT RECORDED, so no line is drawn and no figure given. That does not mean safe.";
        }
        double warmestC = runs().flatMap(run -> warmed.apply(run).stream())
                .mapToDouble(WarmedPoint::peakC)
                .max()
                .orElseThrow();
        return what + " " + Figures.mm(gapMm.getAsDouble()) + " from the wall, before tumescence; red line "
                + Figures.number(warmth.redPeakC()) + " C or " + Figures.number(warmth.redCem43Min())
                + " equivalent minutes at 43 C; the strongest setting computed brings it to "
                + Figures.tenths(warmestC) + " C.";
    }

    private String ceilings() {
        return "Ceilings: " + ceiling(window.powerW(), "W") + ", " + ceiling(window.pullbackSPerCm(), "s/cm") + ", "
                + ceiling(window.energyJPerCm(), "J/cm at whatever power and pullback") + ".";
    }

    private static String ceiling(SegmentWindow.Ceiling ceiling, String unit) {
        return Figures.number(ceiling.value()) + " " + unit + " (" + ceiling.origin() + ")";
    }

    private String ragged() {
        return window.map().isPresent()
                ? "The char line is uneven because the wall of the model dries shell by shell. "
                : "";
    }

    private String blood() {
        return runs().anyMatch(run -> run.flags().contains(HeatFlag.BLOOD_NOT_AS_USUAL))
                ? "With blood left in the vein the figures are extrapolated. "
                : "";
    }

    private String calibration() {
        if (runs().allMatch(run -> run.flags().contains(HeatFlag.NOT_CALIBRATED))) {
            return "No bench fact was compared for this device: trust it less.";
        }
        double[] powerW = tried(run -> pulled(run).powerW());
        double[] pullback = tried(run -> pulled(run).pullbackSPerCm());
        return "Bench facts of the trade were compared from " + Figures.number(powerW[0]) + " to "
                + Figures.number(powerW[1]) + " W and from " + Figures.number(pullback[0]) + " to "
                + Figures.number(pullback[1]) + " s/cm of this map; the model was never held against patients.";
    }

    private static HeatSetting.Pulled pulled(HeatRun run) {
        return (HeatSetting.Pulled) run.setting();
    }

    /** Smallest and largest value among the settings the calibration looked at. */
    private double[] tried(ToDoubleFunction<HeatRun> value) {
        DoubleSummaryStatistics tried = runs().filter(run -> !run.flags().contains(HeatFlag.OUTSIDE_CALIBRATION))
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
