package org.tunica.heat;

import java.util.function.ToDoubleFunction;

/**
 * The numbers of knowledge/ with their ranges.
 *
 * @param value the value of an id; throws for an id it does not know
 * @param low lower end of its range, or the value when it has none
 * @param high upper end of its range, or the value when it has none
 */
public record HeatNumbers(
        ToDoubleFunction<String> value, ToDoubleFunction<String> low, ToDoubleFunction<String> high) {}
