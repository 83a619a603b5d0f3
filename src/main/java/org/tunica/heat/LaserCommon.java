package org.tunica.heat;

import java.util.function.ToDoubleFunction;

/**
 * What all laser fibres share; ids {@code heat.laser.*}.
 *
 * @param nearFactor power factor on the side a forward tip leans on; the far side gets two minus this
 * @param backgroundPerMm absorption besides water and blood
 * @param axialShare axial widening as a multiple of the attenuation length of the wall, at most {@code axialMaxMm}
 */
record LaserCommon(
        double filmMm,
        double efficiency,
        double steamShare,
        double steamLengthMm,
        double steamCutOffC,
        double steamFilmWPerM2K,
        double nearFactor,
        double nearFilmMm,
        double backgroundPerMm,
        double dryWallPerMm,
        double dryFilmPerMm,
        double axialShare,
        double axialMaxMm,
        double charDryness,
        double charC,
        double charS,
        double charThicknessMm,
        TriedSettings triedSettings) {

    static LaserCommon from(ToDoubleFunction<String> number) {
        String id = "heat.laser.";
        return new LaserCommon(
                number.applyAsDouble(id + "film"),
                number.applyAsDouble(id + "efficiency"),
                number.applyAsDouble(id + "steam-share"),
                number.applyAsDouble(id + "steam-length"),
                number.applyAsDouble(id + "steam-cut-off"),
                number.applyAsDouble(id + "steam-film"),
                number.applyAsDouble(id + "near-share"),
                number.applyAsDouble(id + "near-film"),
                number.applyAsDouble(id + "background-absorption"),
                number.applyAsDouble(id + "dry-wall-attenuation"),
                number.applyAsDouble(id + "dry-film-attenuation"),
                number.applyAsDouble(id + "axial-share"),
                number.applyAsDouble(id + "axial-max"),
                number.applyAsDouble(id + "char-dryness"),
                number.applyAsDouble(id + "char-temperature"),
                number.applyAsDouble(id + "char-time"),
                number.applyAsDouble(id + "char-thickness"),
                TriedSettings.from(number, "heat.laser"));
    }

    /** Axial widening by light that spreads in a wall of this attenuation. */
    double axialMm(double wallPerMm) {
        return Math.min(axialShare / wallPerMm, axialMaxMm);
    }

    Pullback.Steam steam(double setW) {
        return new Pullback.Steam(steamShare, Si.m(steamLengthMm), setW, steamCutOffC, steamFilmWPerM2K);
    }

    double powerFactor(Contact contact) {
        return switch (contact) {
            case CONCENTRIC -> 1;
            case NEAR_SIDE -> nearFactor;
            case FAR_SIDE -> 2 - nearFactor;
        };
    }
}
