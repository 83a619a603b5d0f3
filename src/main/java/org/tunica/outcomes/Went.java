package org.tunica.outcomes;

import org.tunica.treatment.Complication;

/**
 * How many treated segments had a complication, of those where it was asked for.
 *
 * @param severe how many had it severely or worse, as far as it was graded
 */
public record Went(Complication.Kind kind, Counted had, Counted severe) {}
