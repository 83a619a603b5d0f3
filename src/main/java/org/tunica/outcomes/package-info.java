/**
 * What became of past cases: how many treated veins were closed when, how long they stayed so, what went wrong, and whether that
 * is what was to be expected.
 *
 * <p>In: past cases. Out: {@link org.tunica.outcomes.SegmentOutcome}s, one for each treated segment. Days of count are those of
 * {@code knowledge/follow-up.yaml}. Segments counted by different definitions of closure are never put together. May import
 * {@code casefile}, {@code knowledge}, {@code plan}, {@code treatment}, {@code pastcases}, {@code statistics}, {@code paper},
 * {@code picture}.
 *
 * <p>Decisions. Limits of a CUSUM are simulated for the mix at hand, for no table fits. Definitions of closure are never pooled.
 */
@NullMarked
package org.tunica.outcomes;

import org.jspecify.annotations.NullMarked;
