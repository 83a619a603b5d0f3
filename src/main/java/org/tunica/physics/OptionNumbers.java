package org.tunica.physics;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is computed for one technique considered for one segment; each part may be unknown.
 *
 * @param wallAtWorkMm the wall in the state in which the technique acts on it
 * @param wallFractionKilled 0 to 1, for heat at once or later in the middle draw; empty where it is not computed
 * @param bloodless whether the lumen will hold no blood while the technique acts
 * @param tumescentMl volume of the tumescent bed or anaesthetic
 * @param lidocaineMgPerKg lidocaine for this segment
 * @param drug the sclerosant chosen from the stock, its strength in per cent
 * @param drugMl liquid drug for this segment
 * @param foamMl foam for this segment
 * @param sclerosantMgPerKg sclerosant for this segment
 * @param lesions focused-ultrasound lesions in one row
 * @param heat what the heat model proposes, for techniques that work by heat
 */
public record OptionNumbers(
        OptionalDouble wallAtWorkMm,
        OptionalDouble wallFractionKilled,
        Optional<Boolean> bloodless,
        OptionalDouble tumescentMl,
        OptionalDouble lidocaineMgPerKg,
        Optional<Stock> drug,
        OptionalDouble drugMl,
        OptionalDouble foamMl,
        OptionalDouble sclerosantMgPerKg,
        OptionalDouble lesions,
        Optional<HeatOutlook> heat) {

    /** A drug at a strength, as the room stocks it. */
    public record Stock(String drug, double percent) {}
}
