package org.tunica.knowledge;

import java.util.OptionalDouble;

/**
 * One number with everything needed to judge it: a limit, a weight or a constant of a model.
 *
 * @param id for example {@code heat.skin-gap.min}
 * @param says what it is, in words
 * @param value in {@code unit}
 * @param low lower end of the range the source gives, in {@code unit}
 * @param high upper end, in {@code unit}
 * @param unit UCUM code
 */
public record Quantity(
        String id,
        String says,
        double value,
        OptionalDouble low,
        OptionalDouble high,
        String unit,
        Provenance provenance) {}
