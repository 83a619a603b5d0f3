/**
 * Numbers computed from a case.
 *
 * <p>The heat part follows one slice of vein while the heat source passes. {@link org.tunica.physics.HeatModel} is its
 * door: a {@link org.tunica.physics.HeatSetting} and a {@link org.tunica.physics.VeinSlice} go in, a
 * {@link org.tunica.physics.HeatRun} comes out. {@link org.tunica.physics.HeatEnsemble} repeats it over what is not
 * known, {@link org.tunica.physics.SettingProposer} searches a setting. All constants come from knowledge/ through
 * {@link org.tunica.physics.HeatConstants}; none stands in Java.
 *
 * <p>The results are indices for a physician, not validated on patients.
 */
package org.tunica.physics;
