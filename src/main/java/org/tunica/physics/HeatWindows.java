package org.tunica.physics;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.Nearest;
import org.tunica.casefile.Segment;
import org.tunica.heat.Fineness;
import org.tunica.heat.HeatEnsemble;
import org.tunica.heat.HeatLimits;
import org.tunica.heat.HeatModel;
import org.tunica.heat.HeatNumbers;
import org.tunica.heat.HeatWindow;
import org.tunica.heat.MeasurementSpread;
import org.tunica.heat.ProposedSetting;
import org.tunica.heat.RepeatedHeat;
import org.tunica.heat.SettingProposer;
import org.tunica.heat.VeinSlice;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;
import org.tunica.knowledge.SettingRange;
import org.tunica.knowledge.Technique;

/** Works out {@link SegmentWindow} for a segment and a heat technique. */
public final class HeatWindows {
    private static final int DRAWS = 64;

    private final Knowledge knowledge;
    private final HeatModel model;
    private final HeatLimits limits;
    private final long seed;

    HeatWindows(Knowledge knowledge, HeatModel model, long seed) {
        this.knowledge = knowledge;
        this.model = model;
        this.limits = HeatLimits.from(knowledge::value);
        this.seed = seed;
    }

    /**
     * The window of a segment.
     *
     * @throws FaultyInput for a technique that is unknown or no heat device, for a wall or lumen that is not recorded,
     *     and for a wall the model does not answer for
     */
    public SegmentWindow of(Segment segment, String techniqueId) {
        Technique technique = heatTechnique(techniqueId);
        VeinSlice slice = slice(segment, technique.id());
        boolean repeated = RepeatedHeat.fits(model, limits, technique.id());
        return new SegmentWindow(
                segment,
                technique,
                slice,
                limits,
                model.leans(technique.id()),
                ceiling("heat.setting.power.max"),
                ceiling("heat.setting.pullback.max"),
                repeated
                        ? Optional.empty()
                        : Optional.of(HeatWindow.of(model, limits, technique.id(), slice, usedPowerW(technique))),
                repeated ? RepeatedHeat.of(model, limits, technique.id(), slice) : List.of(),
                proposed(technique.id(), slice, spread(segment, technique.id())));
    }

    private SegmentWindow.Ceiling ceiling(String id) {
        Quantity quantity = knowledge.quantity(id);
        String source = quantity.provenance().source();
        return new SegmentWindow.Ceiling(
                quantity.value(), knowledge.source(source).cites());
    }

    private ProposedSetting proposed(String deviceId, VeinSlice slice, MeasurementSpread spread) {
        HeatNumbers numbers = new HeatNumbers(
                knowledge::value,
                id -> knowledge.quantity(id).low().orElse(knowledge.value(id)),
                id -> knowledge.quantity(id).high().orElse(knowledge.value(id)));
        HeatEnsemble ensemble = HeatEnsemble.of(numbers, DRAWS, seed, Fineness.CALIBRATED);
        return SettingProposer.of(model, ensemble, limits).propose(deviceId, slice, spread);
    }

    private Technique heatTechnique(String id) {
        Technique technique = knowledge.techniques().get(id);
        Set<String> heat = new TreeSet<>(model.devices());
        heat.retainAll(knowledge.techniqueIds());
        if (technique == null) {
            throw fault("technique " + id, "there is no such technique" + Nearest.hint(id, knowledge.techniqueIds()));
        }
        if (technique.family() != Family.HEAT) {
            throw fault("technique " + id, "is no heat device; those are " + String.join(", ", heat));
        }
        return technique;
    }

    private VeinSlice slice(Segment segment, String deviceId) {
        Faults faults = new Faults();
        known(faults, segment, "wallThicknessMm", segment.wallThicknessMm());
        known(faults, segment, "lumenDiameterMm", segment.lumenDiameterMm());
        faults.throwIfAny("case");
        double wallMm = wallMm(segment, deviceId, 0);
        if (!model.validity().wall().holds(wallMm)) {
            throw fault(
                    "segment " + segment.ref() + ".wallThicknessMm",
                    "the wall on the device would be " + Math.round(100 * wallMm) / 100.0
                            + " mm; the heat model answers for "
                            + model.validity().wall().min() + " to "
                            + model.validity().wall().max() + " mm");
        }
        VeinSlice slice = model.usualSlice(wallMm);
        if (segment.nerve().gapMm().isPresent()) {
            slice = slice.withNerveGapMm(segment.nerve().gapMm().getAsDouble());
        }
        return segment.depthToSkinMm().isPresent()
                ? slice.withSkinGapMm(segment.depthToSkinMm().getAsDouble())
                : slice;
    }

    private static void known(Faults faults, Segment segment, String field, OptionalDouble value) {
        if (Maybe.positive(value).isEmpty()) {
            faults.add("segment " + segment.ref() + "." + field, "is not recorded; the map needs it");
        }
    }

    /** The wall wrapped on the device when it is really this much thicker than measured. */
    private double wallMm(Segment segment, String deviceId, double thickerMm) {
        return WallGeometry.ofLumen(
                        segment.lumenDiameterMm().orElseThrow(),
                        segment.wallThicknessMm().orElseThrow() + thickerMm)
                .wallOnRadiusMm(model.wrapRadiusMm(deviceId));
    }

    private MeasurementSpread spread(Segment segment, String deviceId) {
        double wallSdMm = sd(segment.wallThicknessSdMm(), "limbs.segments.wallThicknessMm");
        return new MeasurementSpread(
                wallMm(segment, deviceId, wallSdMm) - wallMm(segment, deviceId, 0),
                0,
                sd(segment.nerve().gapSdMm(), "limbs.segments.nerve.gapMm"),
                sd(segment.depthToSkinSdMm(), "limbs.segments.depthToSkinMm"));
    }

    private double sd(OptionalDouble recordedMm, String path) {
        return recordedMm.orElse(knowledge.measurements().get(path).sd().orElseThrow());
    }

    private static double usedPowerW(Technique technique) {
        SettingRange power = technique.settings().get("powerW");
        return power == null ? 0 : power.high().orElse(0);
    }

    private static FaultyInput fault(String place, String says) {
        return new FaultyInput("input", List.of(new Fault(place, says)));
    }
}
