/**
 * How deep a heat device kills a vein wall: a radial slice with boiling, drying, char and delayed death.
 *
 * <p>In: a setting of a device and a slice of vein (wall on the device, tumescence, gaps to nerve and skin), with
 * constants by id from knowledge/. Out: depths of kill in mm, char, warmth at nerve and skin, an energy book; with an
 * ensemble of draws the probabilities of each; with limits a proposed setting or a map of settings. {@link
 * org.tunica.heat.Calibration} fits constants to bench measurements. Entry types: {@link org.tunica.heat.HeatModel} and,
 * over it, {@link org.tunica.heat.SettingProposer} and {@link org.tunica.heat.HeatWindow}. May import {@code casefile},
 * for its faults. Home of least squares and CSV reading. Clinical units at the edge, SI inside.
 *
 * <p>Decisions and why:
 *
 * <ul>
 *   <li>The kernel is one slice in its own frame ({@code Bioheat}, no library): boiling by active set inside an implicit
 *       solve; {@code HeatOtherIntegratorTest} and {@code BioheatClosedFormTest} hold it against other mathematics. Constants
 *       are {@code heat.*} and {@code tissue.*} ids, so nothing of knowledge/ is needed; calibration and draws hand in other
 *       numbers.
 *   <li>Damage is counted twice, for death at once and for death in the days after, which includes it. A proposal asks for
 *       the first, else for the second, which common practice counts as closure.
 *   <li>The proposer wants the highest power with the shortest time. A coarse model looks, 12 draws narrow down, all 64
 *       decide; what no setting keeps leads to a compromise that names the limit it breaks. Limits ask what nine draws of ten
 *       keep, and so does the text.
 *   <li>{@code Fineness.DRAWN} has fewer shells and longer steps, for searches and draws only, held to the calibrated steps
 *       by {@code HeatConvergenceTest}; so the perforation index rules see is the worse of draws and shown run.
 *   <li>Outlooks are kept by {@code plan}: wall rounded up to 0.01 mm, gaps down to 0.5 mm and cut at 10 mm, so like cases
 *       share a search and none looks safer for it. They belong to one release, are bounded, and change no answer.
 *   <li>A line of the heat window is the shortest pullback at each power, not a contour of a field: more time never does
 *       less, so all forms come from one number, and a ragged curve is read to the careful side.
 * </ul>
 */
@NullMarked
package org.tunica.heat;

import org.jspecify.annotations.NullMarked;
