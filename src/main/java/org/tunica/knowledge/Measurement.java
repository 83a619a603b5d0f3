package org.tunica.knowledge;

import java.util.OptionalDouble;
import org.tunica.casefile.PlausibleRange;

/**
 * What may be entered for one number of a case.
 *
 * @param path JSON path without indexes
 * @param sd default standard deviation in the unit, where the ranking draws from it
 */
public record Measurement(String path, String says, PlausibleRange range, OptionalDouble sd, Provenance provenance) {}
