package org.tunica.physics;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Room;
import org.tunica.casefile.Segment;
import org.tunica.heat.Fineness;
import org.tunica.heat.HeatConstants;
import org.tunica.heat.HeatEnsemble;
import org.tunica.heat.HeatLimits;
import org.tunica.heat.HeatModel;
import org.tunica.heat.HeatNumbers;
import org.tunica.heat.MeasurementSpread;
import org.tunica.heat.SettingProposer;
import org.tunica.heat.Validity;
import org.tunica.heat.VeinSlice;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Measurement;

/**
 * Turns a segment into slices of the heat model and asks for a setting. Safe for several threads: two that ask the same
 * at once may both compute it, and find the same.
 *
 * <p>The gaps to nerve and skin are taken as recorded: fluid that pushes them away is not counted. They are rounded down to
 * {@link #GAP_STEP_MM} and cut off at {@link #FARTHEST_GAP_MM}, beyond which they are computed as being that near; the wall
 * is rounded up to {@link #WALL_STEP_MM}, which moves nerve and skin outwards by less than that step. So a rounded answer
 * claims no deeper reach and no wider gap, and cases that differ by less than they can be measured share one computation.
 */
final class HeatPlanner {
    private static final String BLOOD_FILM = "heat.blood.film";
    private static final String BLOOD_SHARE = "heat.blood.share";
    private static final String TUMESCENT_SD = "heat.slice.tumescent-sd";
    private static final String START = "tissue.tumescent.temperature";
    private static final String NERVE_GAP = "limbs.segments.nerve.gapMm";
    private static final String SKIN_GAP = "limbs.segments.depthToSkinMm";
    private static final String WALL = "limbs.segments.wallThicknessMm";

    /** Measurements whose usual error is taken where a case gives none. */
    static final List<String> WITH_USUAL_ERROR = List.of(NERVE_GAP, SKIN_GAP, WALL);

    static final int DRAWS = 64;
    private static final double WALL_STEP_MM = 0.01;
    private static final double GAP_STEP_MM = 0.5;
    private static final double FARTHEST_GAP_MM = 10;
    private static final double ROUNDING = 1e-6;

    private final Knowledge knowledge;
    private final HeatModel model;
    private final double bloodFilmMm;
    private final double bloodShare;
    private final double tumescentSdMm;
    private final HeatLimits limits;
    private final Lazily<HeatEnsemble> ensemble;
    private final Lazily<SettingProposer> proposer;
    private final HeatMemory memory;

    HeatPlanner(Knowledge knowledge, ToDoubleFunction<String> number, HeatMemory memory) {
        this.knowledge = knowledge;
        this.memory = memory;
        this.model = HeatModel.of(HeatConstants.from(number));
        this.limits = HeatLimits.from(number);
        this.bloodFilmMm = number.applyAsDouble(BLOOD_FILM);
        this.bloodShare = number.applyAsDouble(BLOOD_SHARE);
        this.tumescentSdMm = number.applyAsDouble(TUMESCENT_SD);
        this.ensemble = new Lazily<>(this::drawn);
        this.proposer = new Lazily<>(() -> SettingProposer.of(model, ensemble(), limits));
    }

    /** The model over all that is not known. */
    HeatEnsemble ensemble() {
        return ensemble.get();
    }

    private HeatEnsemble drawn() {
        HeatNumbers numbers = new HeatNumbers(
                knowledge::value,
                id -> knowledge.quantity(id).low().orElse(knowledge.value(id)),
                id -> knowledge.quantity(id).high().orElse(knowledge.value(id)));
        return HeatEnsemble.of(numbers, DRAWS, Physics.SEED, Fineness.DRAWN);
    }

    /** The outlook of a heat device, or nothing when something it rests on is not known. */
    Optional<HeatOutlook> outlook(
            String device,
            CaseFile caseFile,
            Segment segment,
            Optional<WallGeometry> wall,
            Optional<Boolean> bloodless) {
        return question(device, caseFile, segment, wall, bloodless).map(this::outlook);
    }

    /** What the outlook of a device rests on, rounded as it is sought; nothing when something of it is not known. */
    Optional<HeatQuestion> question(
            String device,
            CaseFile caseFile,
            Segment segment,
            Optional<WallGeometry> wall,
            Optional<Boolean> bloodless) {
        Optional<Boolean> chilled = caseFile.room().tumescent().flatMap(Room.Tumescent::chilled);
        OptionalDouble nerve = segment.nerve().gapMm();
        OptionalDouble skin = segment.depthToSkinMm();
        if (wall.isEmpty() || bloodless.isEmpty() || chilled.isEmpty() || nerve.isEmpty() || skin.isEmpty()) {
            return Optional.empty();
        }
        boolean blood = !bloodless.get();
        double radiusMm = radiusMm(device, blood);
        return Optional.of(new HeatQuestion(
                device,
                up(wall.get().wallOnRadiusMm(radiusMm)),
                blood,
                chilled.get(),
                down(nerve.getAsDouble()),
                down(skin.getAsDouble()),
                spread(segment, wall.get(), radiusMm)));
    }

    /** Found before, or sought now. */
    HeatOutlook outlook(HeatQuestion question) {
        return found(question).orElseGet(() -> compute(question));
    }

    /** The answer, if it takes no computing: it was found before, or the model does not answer for such a wall. */
    Optional<HeatOutlook> found(HeatQuestion question) {
        Validity.Range walls = model.validity().wall();
        if (walls.holds(question.wallMm())) {
            return memory.recall(question);
        }
        return Optional.of(HeatOutlook.silent(
                radiusMm(question.device(), question.blood()),
                question.wallMm(),
                "a wall of " + question.wallMm() + " mm on the device lies outside the " + walls.min() + " to "
                        + walls.max() + " mm the model answers for"));
    }

    HeatModel model() {
        return model;
    }

    HeatLimits limits() {
        return limits;
    }

    /** Radius the wall wraps on; blood that is not pressed out makes the film thicker. */
    double radiusMm(String device, boolean blood) {
        return blood && model.isLaser(device) ? model.deviceRadiusMm(device) + bloodFilmMm : model.wrapRadiusMm(device);
    }

    private HeatOutlook compute(HeatQuestion question) {
        HeatOutlook outlook = HeatOutlook.of(
                radiusMm(question.device(), question.blood()),
                question.wallMm(),
                proposer.get().propose(question.device(), slice(question), question.spread()));
        memory.keep(question, outlook);
        return outlook;
    }

    private VeinSlice slice(HeatQuestion question) {
        return vein(question.device(), question.wallMm(), question.blood(), question.chilled())
                .withNerveGapMm(question.nerveGapMm())
                .withSkinGapMm(question.skinGapMm());
    }

    /** The vein around a device, with nothing beside it to look at. */
    VeinSlice vein(String device, double wallMm, boolean blood, boolean chilled) {
        VeinSlice usual = model.usualSlice(wallMm);
        double startC = chilled ? knowledge.quantity(START).low().orElse(usual.tumescentC()) : usual.tumescentC();
        VeinSlice slice = VeinSlice.of(wallMm, usual.tumescentMm(), startC);
        if (!blood) {
            return slice;
        }
        VeinSlice bloody = slice.withBloodFraction(bloodShare);
        return model.isLaser(device) ? bloody.withFilmMm(bloodFilmMm) : bloody;
    }

    /** How far the measurements of a segment may be off, with its wall wrapped on a radius. */
    MeasurementSpread spread(Segment segment, WallGeometry wall, double radiusMm) {
        return new MeasurementSpread(
                up(wallSdMm(segment, wall, radiusMm)),
                tumescentSdMm,
                segment.nerve().gapSdMm().orElse(sd(NERVE_GAP)),
                segment.depthToSkinSdMm().orElse(sd(SKIN_GAP)));
    }

    /** The error of the measured wall, carried over to the wall on the device. */
    private double wallSdMm(Segment segment, WallGeometry wall, double radiusMm) {
        double sdMm = segment.wallThicknessSdMm().orElse(sd(WALL));
        double lumenMm = segment.lumenDiameterMm().orElseThrow();
        double thicker = segment.wallThicknessMm().orElseThrow() + sdMm;
        return WallGeometry.ofLumen(lumenMm, thicker).wallOnRadiusMm(radiusMm) - wall.wallOnRadiusMm(radiusMm);
    }

    private double sd(String path) {
        Measurement measurement = knowledge.measurements().get(path);
        return measurement.sd().orElseThrow(() -> new IllegalArgumentException("no standard deviation for " + path));
    }

    /** Up to the next step, forgiving what binary fractions add; never a negative nought, which equals no other key. */
    static double up(double mm) {
        return Math.ceil(mm / WALL_STEP_MM - ROUNDING) / Math.round(1 / WALL_STEP_MM) + 0.0;
    }

    static double down(double gapMm) {
        return Math.min(FARTHEST_GAP_MM, Math.floor(gapMm / GAP_STEP_MM + ROUNDING) * GAP_STEP_MM);
    }
}
