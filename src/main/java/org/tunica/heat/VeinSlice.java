package org.tunica.heat;

import java.util.OptionalDouble;

/**
 * One cross-section of an emptied vein wrapped around a device.
 *
 * @param wallMm wall thickness on the device, wrapped on {@link HeatModel#wrapRadiusMm}; never that of another state
 * @param tumescentMm thickness of the tumescent layer around the vein, 0 for none
 * @param tumescentC temperature of wall and tumescent layer when heating starts
 * @param filmMm fluid film between device and wall, when it is not the usual one of the device
 * @param bloodFraction blood share of the film, when the vein is not emptied as usual; such a result is extrapolated
 * @param nerveGapMm from the outer face of the wall to the nerve, when there is one to look at
 * @param skinGapMm from the outer face of the wall to the skin, when it is to be looked at
 */
public record VeinSlice(
        double wallMm,
        double tumescentMm,
        double tumescentC,
        OptionalDouble filmMm,
        OptionalDouble bloodFraction,
        OptionalDouble nerveGapMm,
        OptionalDouble skinGapMm) {

    public VeinSlice {
        Checks.positive("wallMm", wallMm);
        Checks.notNegative("tumescentMm", tumescentMm);
        Checks.finite("tumescentC", tumescentC);
        filmMm.ifPresent(film -> Checks.positive("filmMm", film));
        bloodFraction.ifPresent(blood -> Checks.notNegative("bloodFraction", blood));
        nerveGapMm.ifPresent(gap -> Checks.notNegative("nerveGapMm", gap));
        skinGapMm.ifPresent(gap -> Checks.notNegative("skinGapMm", gap));
    }

    /** An emptied vein with the usual film and nothing else to look at. */
    public static VeinSlice of(double wallMm, double tumescentMm, double tumescentC) {
        OptionalDouble none = OptionalDouble.empty();
        return new VeinSlice(wallMm, tumescentMm, tumescentC, none, none, none, none);
    }

    /** The same slice with a nerve at this distance from the outer wall. */
    public VeinSlice withNerveGapMm(double gapMm) {
        return new VeinSlice(
                wallMm, tumescentMm, tumescentC, filmMm, bloodFraction, OptionalDouble.of(gapMm), skinGapMm);
    }

    /** The same slice with the skin at this distance from the outer wall. */
    public VeinSlice withSkinGapMm(double gapMm) {
        return new VeinSlice(
                wallMm, tumescentMm, tumescentC, filmMm, bloodFraction, nerveGapMm, OptionalDouble.of(gapMm));
    }

    /** The same slice with another fluid film. */
    public VeinSlice withFilmMm(double thicknessMm) {
        return new VeinSlice(
                wallMm, tumescentMm, tumescentC, OptionalDouble.of(thicknessMm), bloodFraction, nerveGapMm, skinGapMm);
    }

    /** The same slice with this much blood in the film. */
    public VeinSlice withBloodFraction(double fraction) {
        return new VeinSlice(
                wallMm, tumescentMm, tumescentC, filmMm, OptionalDouble.of(fraction), nerveGapMm, skinGapMm);
    }

    void checkAgainst(Validity validity) {
        validity.wall().check("wallMm", wallMm);
        validity.tumescent().check("tumescentMm", tumescentMm);
        validity.start().check("tumescentC", tumescentC);
        filmMm.ifPresent(film -> validity.film().check("filmMm", film));
        bloodFraction.ifPresent(blood -> validity.blood().check("bloodFraction", blood));
    }
}
