package org.tunica.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.Nearest;
import org.tunica.casefile.Room;
import org.tunica.casefile.Segment;
import org.tunica.heat.HeatLimits;
import org.tunica.heat.HeatModel;
import org.tunica.heat.HeatSetting;
import org.tunica.heat.HeatWindow;
import org.tunica.heat.ProposedSetting;
import org.tunica.heat.RepeatedHeat;
import org.tunica.heat.Validity;
import org.tunica.heat.VeinSlice;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;
import org.tunica.knowledge.SettingRange;
import org.tunica.knowledge.Technique;

/** Works out the {@link SegmentWindow} of a segment and a heat technique. */
public final class HeatWindows {
    private final Knowledge knowledge;
    private final HeatPlanner heat;

    HeatWindows(Knowledge knowledge, HeatPlanner heat) {
        this.knowledge = knowledge;
        this.heat = heat;
    }

    /**
     * The window of a segment of a case. A gap that is not recorded gives a window without its line; what else is not
     * recorded is taken as usual and named.
     *
     * @throws FaultyInput for a technique that is unknown or no heat device, for a wall or lumen that is not recorded,
     *     and for a wall the model does not answer for
     */
    public SegmentWindow of(CaseFile caseFile, Segment segment, String techniqueId) {
        SegmentWindow outline = outline(caseFile, segment, techniqueId);
        return outline.repeats().isEmpty()
                ? outline.with(HeatWindow.of(
                        heat.model(), heat.limits(), techniqueId, outline.slice(), usedPowerW(outline.technique())))
                : outline;
    }

    /**
     * The same without the map, which takes seconds to compute.
     *
     * @throws FaultyInput as {@link #of}
     */
    public SegmentWindow outline(CaseFile caseFile, Segment segment, String techniqueId) {
        Technique technique = heatTechnique(techniqueId);
        Wrapped wrapped = wrapped(caseFile, segment, technique, heat::outlook);
        HeatModel model = heat.model();
        HeatLimits limits = heat.limits();
        return new SegmentWindow(
                segment,
                technique,
                wrapped.slice(),
                limits,
                model.leans(technique.id()),
                ceiling("heat.setting.power.max"),
                ceiling("heat.setting.pullback.max"),
                ceiling("heat.setting.energy.max"),
                wrapped.assumed(),
                Optional.empty(),
                RepeatedHeat.fits(model, limits, technique.id())
                        ? RepeatedHeat.of(model, limits, technique.id(), wrapped.slice())
                        : List.of(),
                proposed(wrapped.option()),
                Optional.empty());
    }

    /**
     * What one power and pull-back do to the wall of a segment, by the same run of the model as at a node of its window.
     *
     * @throws FaultyInput as {@link #of}, also for a device that is not drawn back and for numbers the model does not
     *     answer for
     */
    public WindowPoint point(
            CaseFile caseFile, Segment segment, String techniqueId, double powerW, double pullbackSPerCm) {
        Technique technique = heatTechnique(techniqueId);
        HeatLimits limits = heat.limits();
        if (RepeatedHeat.fits(heat.model(), limits, technique.id())) {
            throw fault("technique " + techniqueId, "leaves neither power nor pullback to choose");
        }
        Wrapped wrapped = wrapped(caseFile, segment, technique, (device, of, at, wall, blood) -> Optional.empty());
        HeatSetting.Pulled setting = new HeatSetting.Pulled(
                techniqueId,
                held("powerW", powerW, heat.model().validity().power()),
                held("pullbackSPerCm", pullbackSPerCm, heat.model().validity().pullback()));
        return new WindowPoint(
                segment,
                technique,
                wrapped.slice(),
                limits,
                ceiling("heat.setting.power.max"),
                ceiling("heat.setting.pullback.max"),
                ceiling("heat.setting.energy.max"),
                wrapped.assumed(),
                heat.model().run(setting, wrapped.slice()));
    }

    /** What can be set on a device that is drawn back, so that the model answers. */
    public SettingReach reach() {
        Validity validity = heat.model().validity();
        HeatLimits limits = heat.limits();
        return new SettingReach(
                SettingReach.Axis.of(validity.power(), limits.powerW()),
                SettingReach.Axis.of(validity.pullback(), limits.pullbackSPerCm()));
    }

    private static double held(String place, double value, Validity.Range range) {
        if (!range.holds(value)) {
            throw fault(place, "must be " + range.min() + " to " + range.max() + ", is " + value);
        }
        return value;
    }

    /** The wall on the device, and what it rests on. */
    private record Wrapped(VeinSlice slice, OptionNumbers option, List<String> assumed) {}

    private Wrapped wrapped(CaseFile caseFile, Segment segment, Technique technique, Outlooks outlooks) {
        measured(segment);
        SegmentNumbers numbers = new SegmentCalculator(knowledge).numbers(caseFile, segment);
        OptionNumbers option = new OptionCalculator(
                        heat, outlooks, StrongFoam.of(knowledge), caseFile, segment, numbers)
                .numbers(technique);
        Optional<Boolean> chilled = caseFile.room().tumescent().flatMap(Room.Tumescent::chilled);
        VeinSlice slice = slice(segment, technique.id(), numbers, option.bloodless(), chilled);
        return new Wrapped(slice, option, assumed(option.bloodless(), chilled));
    }

    private static Optional<ProposedSetting> proposed(OptionNumbers option) {
        return option.heat().flatMap(HeatOutlook::proposed);
    }

    private SegmentWindow.Ceiling ceiling(String id) {
        Quantity quantity = knowledge.quantity(id);
        String source = quantity.provenance().source();
        return new SegmentWindow.Ceiling(
                quantity.value(), knowledge.source(source).cites());
    }

    private Technique heatTechnique(String id) {
        Technique technique = knowledge.techniques().get(id);
        if (technique == null) {
            throw fault("technique " + id, "there is no such technique" + Nearest.hint(id, knowledge.techniqueIds()));
        }
        if (technique.family() != Family.HEAT) {
            Set<String> known = new TreeSet<>(heat.model().devices());
            known.retainAll(knowledge.techniqueIds());
            throw fault("technique " + id, "is no heat device; those are " + String.join(", ", known));
        }
        return technique;
    }

    private static void measured(Segment segment) {
        Faults faults = new Faults();
        known(faults, segment, "wallThicknessMm", segment.wallThicknessMm());
        known(faults, segment, "lumenDiameterMm", segment.lumenDiameterMm());
        faults.throwIfAny("case");
    }

    private static void known(Faults faults, Segment segment, String field, OptionalDouble value) {
        if (Maybe.positive(value).isEmpty()) {
            faults.add("segment " + segment.ref() + "." + field, "is not recorded; the window needs it");
        }
    }

    private VeinSlice slice(
            Segment segment,
            String device,
            SegmentNumbers numbers,
            Optional<Boolean> bloodless,
            Optional<Boolean> chilled) {
        boolean blood = !bloodless.orElse(true);
        double wallMm = numbers.wall().orElseThrow().wallOnRadiusMm(heat.radiusMm(device, blood));
        Validity.Range walls = heat.model().validity().wall();
        if (!walls.holds(wallMm)) {
            throw fault(
                    "segment " + segment.ref() + ".wallThicknessMm",
                    "makes a wall of " + Math.round(100 * wallMm) / 100.0 + " mm on the device; the heat model answers"
                            + " for " + walls.min() + " to " + walls.max() + " mm");
        }
        VeinSlice vein = heat.vein(device, wallMm, blood, chilled.orElse(false));
        OptionalDouble nerveMm = segment.nerve().gapMm();
        OptionalDouble skinMm = segment.depthToSkinMm();
        VeinSlice besideNerve = nerveMm.isPresent() ? vein.withNerveGapMm(nerveMm.getAsDouble()) : vein;
        return skinMm.isPresent() ? besideNerve.withSkinGapMm(skinMm.getAsDouble()) : besideNerve;
    }

    private static List<String> assumed(Optional<Boolean> bloodless, Optional<Boolean> chilled) {
        List<String> assumed = new ArrayList<>();
        if (bloodless.isEmpty()) {
            assumed.add(
                    "Whether the vein can be emptied of blood (head-down position, tumescence) is not recorded; it is"
                            + " drawn as emptied.");
        }
        if (chilled.isEmpty()) {
            assumed.add("Whether the tumescence is chilled is not recorded; it is drawn as not chilled.");
        }
        return assumed;
    }

    private static double usedPowerW(Technique technique) {
        SettingRange power = technique.settings().get("powerW");
        return power == null ? 0 : power.high().orElse(0);
    }

    private static FaultyInput fault(String place, String says) {
        return new FaultyInput("input", List.of(new Fault(place, says)));
    }
}
