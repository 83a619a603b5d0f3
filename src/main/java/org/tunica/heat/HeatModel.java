package org.tunica.heat;

import java.util.Set;

/**
 * How deep a heat device kills a vein wall, and what it does to nerve and skin; the door to the heat kernel.
 *
 * <p>One cross-section is followed in its own frame while the source passes; heat along the vein is left out (error
 * about 1 % of depth, see {@link HeatFlag#AXIAL_CONDUCTION}). It does not answer for the last 3 mm of a short element
 * held still, for heating at one point, or for focused ultrasound. Blood-filled veins, shrinkage, rupture and vessels
 * beside the nerve are outside the model; damage constants are those of arterial wall and of other soft tissues.
 *
 * <p>Immutable and safe to share between threads; each thread keeps its own workspace.
 */
public final class HeatModel {
    /** At longer steps the drying of a charring wall is under-stated by a quarter (measured on a jacketed tip). */
    private static final double CHARRING_STEP_FACTOR = 0.5;

    private final HeatConstants constants;
    private final Fineness fineness;
    private final ThreadLocal<SliceRun> runs;
    private final ThreadLocal<SliceRun> fineRuns;

    private HeatModel(HeatConstants constants, RateTables rates, Fineness fineness) {
        this.constants = constants;
        this.fineness = fineness;
        this.runs = ThreadLocal.withInitial(() -> new SliceRun(constants, rates, fineness));
        Fineness fine = fineness.withStepFactor(Math.min(CHARRING_STEP_FACTOR, fineness.stepFactor()));
        this.fineRuns = ThreadLocal.withInitial(() -> new SliceRun(constants, rates, fine));
    }

    /** The model at the steps it was calibrated with. */
    public static HeatModel of(HeatConstants constants) {
        return of(constants, Fineness.CALIBRATED);
    }

    /** The model at other steps. */
    public static HeatModel of(HeatConstants constants, Fineness fineness) {
        return new HeatModel(constants, new RateTables(constants.tissue()), fineness);
    }

    /** Ids of the devices it knows, in a fixed order. */
    public Set<String> devices() {
        return constants.deviceIds();
    }

    /** The range of inputs it answers for. */
    public Validity validity() {
        return constants.validity();
    }

    /** An emptied vein with the usual tumescent layer. */
    public VeinSlice usualSlice(double wallMm) {
        TissueConstants tissue = constants.tissue();
        return VeinSlice.of(wallMm, tissue.usualTumescentMm(), tissue.usualTumescentC());
    }

    /** Radius of the device alone, mm. */
    public double deviceRadiusMm(String deviceId) {
        return constants.device(deviceId).radiusMm();
    }

    /** Whether the device fires light, which blood and a thick film take up. */
    public boolean isLaser(String deviceId) {
        return constants.device(deviceId) instanceof LaserFibre;
    }

    /** Radius the wall wraps on, mm: the device and its usual film. */
    public double wrapRadiusMm(String deviceId) {
        HeatDevice device = constants.device(deviceId);
        return device.radiusMm() + device.filmMm();
    }

    /** Whether the tip of a device is taken as leaning on one side. */
    public boolean leans(String deviceId) {
        return constants.device(deviceId).leans();
    }

    /**
     * Runs one setting on one slice. A forward laser tip is taken as leaning on one side: closure is that of the far
     * side, char, perforation and warmth those of the near side.
     *
     * @throws IllegalArgumentException for an unknown device, a setting of another kind than the device, or an input
     *     outside {@link #validity()}
     */
    public HeatRun run(HeatSetting setting, VeinSlice slice) {
        if (!constants.device(setting.deviceId()).leans()) {
            return run(setting, slice, Contact.CONCENTRIC);
        }
        return run(setting, slice, Contact.FAR_SIDE).leaningOn(nearSide(setting, slice));
    }

    /** The near side, at short steps where drying is under way and its outcome open. */
    private HeatRun nearSide(HeatSetting setting, VeinSlice slice) {
        HeatRun near = run(setting, slice, Contact.NEAR_SIDE);
        // draws show a spread, not this one number: the run shown beside them takes the short steps
        boolean settled =
                fineness.untilCool() || near.dryDepthMm() == 0 || near.chars() && near.perforationIndex() >= 1;
        HeatDevice device = constants.device(setting.deviceId());
        return settled ? near : fineRuns.get().run(device, setting, slice, Contact.NEAR_SIDE);
    }

    /**
     * Runs one setting on one slice for a given contact.
     *
     * @throws IllegalArgumentException as {@link #run(HeatSetting, VeinSlice)}, or for a side of a device that does not
     *     lean
     */
    HeatRun run(HeatSetting setting, VeinSlice slice, Contact contact) {
        HeatDevice device = constants.device(setting.deviceId());
        setting.checkAgainst(constants.validity());
        slice.checkAgainst(constants.validity());
        if (contact != Contact.CONCENTRIC && !device.leans()) {
            throw new IllegalArgumentException(
                    "contact must be CONCENTRIC for " + setting.deviceId() + ", got " + contact);
        }
        return runs.get().run(device, setting, slice, contact);
    }

    HeatConstants constants() {
        return constants;
    }

    Fineness fineness() {
        return fineness;
    }
}
