/**
 * How deep a heat device kills a vein wall: a radial slice with boiling, drying, char and delayed death.
 *
 * <p>In: a setting of a device and a slice of vein (wall on the device, tumescence, gaps to nerve and skin), with
 * constants by id from knowledge/. Out: depths of kill in mm, char, warmth at nerve and skin, an energy book; with an
 * ensemble of draws the probabilities of each; with limits a proposed setting or a map of settings. {@link
 * org.tunica.heat.Calibration} fits constants to bench measurements. Entry types: {@link org.tunica.heat.HeatModel} and,
 * over it, {@link org.tunica.heat.SettingProposer} and {@link org.tunica.heat.HeatWindow}. May import {@code casefile},
 * for its faults. Home of least squares and CSV reading. Clinical units at the edge, SI inside.
 */
@NullMarked
package org.tunica.heat;

import org.jspecify.annotations.NullMarked;
