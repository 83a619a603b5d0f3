package org.tunica.heat;

import java.util.Arrays;

/**
 * Laser light: a share heats the tip (the innermost shell), the rest is attenuated shell by shell and what a shell
 * attenuates heats it,
 *
 * <pre>
 * q_i = (1 - tip) q exp(-tau_i) (1 - exp(-mu_i dr_i)),   mu = sqrt( mua (mua + 3 mus') )
 * </pre>
 *
 * mua absorption and mus' reduced scattering in 1/m. Dried film and wall change to their dry attenuation in step with
 * the water lost. Limits: straight attenuation for mus' = 0, diffusion for mus' far above mua. Light that reaches the
 * outer radius is not booked.
 */
final class LightDeposition implements Deposition {
    private final double tipShare;
    private final double[] wetPerM;
    private final double[] dryPerM;
    private final double[] passed;
    private final double[] seenWetness;

    /**
     * @param wetPerM attenuation of each wet shell
     * @param dryPerM attenuation of each dry shell
     */
    LightDeposition(RadialGrid grid, double tipShare, double[] wetPerM, double[] dryPerM) {
        this.tipShare = tipShare;
        this.wetPerM = wetPerM;
        this.dryPerM = dryPerM;
        passed = new double[grid.cells];
        seenWetness = new double[grid.cells];
        Arrays.fill(seenWetness, Double.NaN);
    }

    @Override
    public void deposit(double lineWPerM, Bioheat slice) {
        double[] source = slice.sourceWPerM();
        double[] wetness = slice.wetness();
        double[] widthM = slice.grid().widthM;
        double left = (1 - tipShare) * lineWPerM;
        source[0] = tipShare * lineWPerM;
        for (int i = 0; i < passed.length; i++) {
            double f = wetness[i];
            if (f != seenWetness[i]) {
                seenWetness[i] = f;
                passed[i] = Math.exp(-(f * wetPerM[i] + (1 - f) * dryPerM[i]) * widthM[i]);
            }
            double through = left * passed[i];
            source[i] += left - through;
            left = through;
        }
    }
}
