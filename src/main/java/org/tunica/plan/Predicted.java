package org.tunica.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the computed models foresee. A number that is not computed is absent and {@code says} tells why; for heat the
 * numbers belong to the computed setting beside it. Indices for a physician, not validated on patients.
 *
 * @param wallAtWorkMm the wall in the state in which the technique acts
 * @param wallFractionKilled share of the wall reached, 0 to 1; for heat at once or later, in the middle draw
 * @param wallFractionKilledAtOnce for heat, share dead at once with the constants as they stand
 * @param killDepthMm for heat, depth of death at once from the inner face; may go beyond the wall
 * @param charIndex charring starts at 1
 * @param perforationIndex perforation is feared at 1
 * @param nervePeakC highest temperature at the recorded gap to the nerve
 * @param nerveCem43Min thermal dose there, equivalent minutes at 43 C
 * @param skinPeakC highest temperature at the recorded depth of the skin
 * @param skinCem43Min thermal dose there
 * @param bloodless whether the lumen will hold no blood
 * @param heat for heat, what the draws over all that is not known say
 */
public record Predicted(
        OptionalDouble wallAtWorkMm,
        OptionalDouble wallFractionKilled,
        OptionalDouble wallFractionKilledAtOnce,
        OptionalDouble killDepthMm,
        OptionalDouble charIndex,
        OptionalDouble perforationIndex,
        OptionalDouble nervePeakC,
        OptionalDouble nerveCem43Min,
        OptionalDouble skinPeakC,
        OptionalDouble skinCem43Min,
        Optional<Boolean> bloodless,
        Optional<HeatForecast> heat,
        String says) {

    /**
     * A setting over many draws of constants and measurements.
     *
     * @param death at-once, at-once-or-later or not-through, with the wished probability
     * @param deathAtOnceShare share of draws in which the whole wall dies at once, 0 to 1
     * @param deathShare the same at once or later
     * @param charShare share of draws in which charring starts
     * @param draws number of draws
     * @param withinLimits whether char, perforation, nerve and skin keep their limits
     * @param limit what keeps a stronger setting from being proposed
     * @param trust why to trust the numbers less; empty when nothing is known against them
     * @param spreads ten, fifty and ninety percent points
     */
    public record HeatForecast(
            String death,
            double deathAtOnceShare,
            double deathShare,
            double charShare,
            int draws,
            boolean withinLimits,
            String limit,
            List<String> trust,
            List<Spread> spreads) {}

    /**
     * The spread of one number.
     *
     * @param of what is spread
     * @param unit UCUM code
     */
    public record Spread(String of, double low, double middle, double high, String unit) {}
}
