package org.tunica.plan;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the computed models foresee; a number that is not computed is absent and {@code says} tells so.
 *
 * @param wallAtWorkMm the wall in the state in which the technique acts
 * @param wallFractionKilled 0 to 1
 */
public record Predicted(
        OptionalDouble wallAtWorkMm, OptionalDouble wallFractionKilled, Optional<Boolean> bloodless, String says) {}
