/**
 * Numbers computed from a case: wall geometry, volumes, doses, how deep an agent kills, what a focus covers.
 *
 * <p>In: a case, one of its segments, and the constants of {@code knowledge}. Out: {@link
 * org.tunica.physics.Derived}, in which every number that rests on something unknown is unknown itself. Entry type:
 * {@link org.tunica.physics.Physics}. May import {@code casefile}, {@code knowledge} and {@code heat}. Clinical units at
 * the edge, the unit in every name.
 *
 * <p>Decision. Relaxed means standing and out of spasm. A lying lumen is brought upright by the published median and says so;
 * sitting and head-down stay unknown. The relaxed lumen of a vein in spasm counts in the posture it was measured in.
 */
@NullMarked
package org.tunica.physics;

import org.jspecify.annotations.NullMarked;
