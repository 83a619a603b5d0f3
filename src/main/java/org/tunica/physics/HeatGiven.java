package org.tunica.physics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Segment;
import org.tunica.heat.HeatSetting;
import org.tunica.heat.HeatSpread;
import org.tunica.heat.Interval;
import org.tunica.heat.MeasurementSpread;
import org.tunica.heat.RepeatedHeat;
import org.tunica.heat.Validity;
import org.tunica.heat.VeinSlice;
import org.tunica.heat.WarmedSpread;
import org.tunica.knowledge.Knowledge;

/**
 * Runs the heat model on a setting that was really used.
 *
 * <p>What is not recorded of the way of working is never taken as the better: the vein is computed emptied and not
 * emptied, the tumescence chilled and not chilled; the least deadly of them counts for the wall, the warmest for the rest.
 */
public final class HeatGiven {
    private final Knowledge knowledge;
    private final HeatPlanner heat;

    HeatGiven(Knowledge knowledge, HeatPlanner heat) {
        this.knowledge = knowledge;
        this.heat = heat;
    }

    /**
     * How the vein lay while it was heated.
     *
     * @param headDown whether the patient lay head-down, so that blood ran out of it
     * @param tumescent whether fluid pressed it on the device
     * @param chilled whether that fluid was chilled
     */
    public record Circumstances(Optional<Boolean> headDown, Optional<Boolean> tumescent, Optional<Boolean> chilled) {

        /** Whether the vein held no blood. */
        Optional<Boolean> emptied() {
            return Maybe.and(headDown, tumescent);
        }
    }

    /**
     * What a setting did.
     *
     * @param spreads one for every way it may have been, each over all that is not known; none when the model cannot
     *     tell
     * @param silence why it cannot; empty when it can
     * @param assumed what was not recorded and how it was taken
     */
    public record Effect(List<HeatSpread> spreads, String silence, List<String> assumed) {
        public Effect {
            spreads = List.copyOf(spreads);
            assumed = List.copyOf(assumed);
        }

        /** Whether the model can tell. */
        public boolean told() {
            return !spreads.isEmpty();
        }

        /** Number of draws. */
        public int draws() {
            return spreads.get(0).draws();
        }

        /** Share of draws in which the whole wall died at once, in the least deadly way it may have been. */
        public double killProbability() {
            return least(HeatSpread::killProbability);
        }

        /** The same for death at once or in the days after. */
        public double delayedProbability() {
            return least(HeatSpread::delayedProbability);
        }

        /** Share of draws in which the wall charred, in the worst way. */
        public double charProbability() {
            return spreads.stream()
                    .mapToDouble(HeatSpread::charProbability)
                    .max()
                    .orElseThrow();
        }

        /** Highest temperature of the nerve in the warmest way; absent without its gap. */
        public Optional<Interval> nervePeakC() {
            return warmest(HeatSpread::nerve);
        }

        /** The same of the skin. */
        public Optional<Interval> skinPeakC() {
            return warmest(HeatSpread::skin);
        }

        private double least(ToDoubleFunction<HeatSpread> share) {
            return spreads.stream().mapToDouble(share).min().orElseThrow();
        }

        private Optional<Interval> warmest(Function<HeatSpread, Optional<WarmedSpread>> place) {
            return spreads.stream()
                    .flatMap(spread -> place.apply(spread).stream())
                    .map(WarmedSpread::peakC)
                    .max(Comparator.comparingDouble(Interval::p90));
        }
    }

    /**
     * What of a setting is recorded.
     *
     * @param cycles on each stretch of a contact element
     * @param pulsesPerCm of steam
     */
    public record Recorded(
            OptionalDouble powerW, OptionalDouble pullbackSPerCm, OptionalInt cycles, OptionalDouble pulsesPerCm) {}

    /**
     * What a setting did to the wall of a segment, and what nerve and skin felt of it where their gaps are recorded.
     *
     * @param device id of a heat device; another one gets no answer
     */
    public Effect of(CaseFile caseFile, Segment segment, String device, Recorded recorded, Circumstances how) {
        if (!heat.model().devices().contains(device)) {
            return silent("the heat model does not know the device");
        }
        boolean repeated = RepeatedHeat.fits(heat.model(), heat.limits(), device);
        Optional<HeatSetting> setting = repeated ? repeated(device, recorded) : pulled(device, recorded);
        return setting.map(known -> of(caseFile, segment, known, how))
                .orElseGet(() -> silent(
                        repeated
                                ? "neither cycles nor pulses are recorded"
                                : "power and pullback are not both recorded"));
    }

    private static Optional<HeatSetting> pulled(String device, Recorded recorded) {
        return recorded.powerW().isPresent() && recorded.pullbackSPerCm().isPresent()
                ? Optional.of(new HeatSetting.Pulled(
                        device,
                        recorded.powerW().getAsDouble(),
                        recorded.pullbackSPerCm().getAsDouble()))
                : Optional.empty();
    }

    private static Optional<HeatSetting> repeated(String device, Recorded recorded) {
        if (recorded.pulsesPerCm().isPresent()) {
            return Optional.of(
                    new HeatSetting.Pulsed(device, recorded.pulsesPerCm().getAsDouble()));
        }
        return recorded.cycles().isPresent()
                ? Optional.of(new HeatSetting.Held(device, recorded.cycles().getAsInt()))
                : Optional.empty();
    }

    private Effect of(CaseFile caseFile, Segment segment, HeatSetting setting, Circumstances how) {
        Optional<WallGeometry> wall =
                new SegmentCalculator(knowledge).numbers(caseFile, segment).wall();
        if (wall.isEmpty()) {
            return silent(
                    segment.wallThicknessMm().isEmpty()
                            ? "the thickness of the wall was not recorded before"
                            : "the lumen was not recorded before");
        }
        try {
            setting.checkAgainst(heat.model().validity());
            return new Effect(everyWay(segment, wall.get(), setting, how), "", assumed(how));
        } catch (IllegalArgumentException e) {
            return silent("the heat model does not answer for it: " + e.getMessage());
        }
    }

    private static Effect silent(String why) {
        return new Effect(List.of(), why, List.of());
    }

    private List<HeatSpread> everyWay(Segment segment, WallGeometry wall, HeatSetting setting, Circumstances how) {
        List<HeatSpread> all = new ArrayList<>();
        for (boolean emptied : either(how.emptied())) {
            for (boolean chilled : either(how.chilled())) {
                all.add(run(segment, wall, setting, emptied, chilled));
            }
        }
        return all;
    }

    private HeatSpread run(Segment segment, WallGeometry wall, HeatSetting setting, boolean emptied, boolean chilled) {
        String device = setting.deviceId();
        double radiusMm = heat.radiusMm(device, !emptied);
        double wallMm = HeatPlanner.up(wall.wallOnRadiusMm(radiusMm));
        Validity.Range walls = heat.model().validity().wall();
        if (!walls.holds(wallMm)) {
            throw new IllegalArgumentException("a wall of " + wallMm + " mm on the device lies outside " + walls.min()
                    + " to " + walls.max() + " mm");
        }
        MeasurementSpread spread = heat.spread(segment, wall, radiusMm);
        return heat.ensemble().run(setting, slice(segment, heat.vein(device, wallMm, !emptied, chilled)), spread);
    }

    private static VeinSlice slice(Segment segment, VeinSlice vein) {
        OptionalDouble nerveMm = segment.nerve().gapMm();
        OptionalDouble skinMm = segment.depthToSkinMm();
        VeinSlice besideNerve = nerveMm.isPresent() ? vein.withNerveGapMm(down(nerveMm)) : vein;
        return skinMm.isPresent() ? besideNerve.withSkinGapMm(down(skinMm)) : besideNerve;
    }

    private static double down(OptionalDouble gapMm) {
        return HeatPlanner.down(gapMm.getAsDouble());
    }

    private static List<Boolean> either(Optional<Boolean> known) {
        return known.map(List::of).orElse(List.of(true, false));
    }

    private static List<String> assumed(Circumstances how) {
        List<String> assumed = new ArrayList<>();
        if (how.emptied().isEmpty()) {
            assumed.add("whether the vein was emptied of blood is not recorded; the worse of both is told");
        }
        if (how.chilled().isEmpty()) {
            assumed.add("whether the tumescence was chilled is not recorded; the worse of both is told");
        }
        return assumed;
    }
}
