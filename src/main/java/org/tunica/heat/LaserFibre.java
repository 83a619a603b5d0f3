package org.tunica.heat;

import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * A laser fibre of one wavelength and one tip.
 *
 * @param radiusMm radius of the lumen around the tip
 * @param heatedMm axial length lit
 * @param profile how the heat spreads around that length
 * @param tipShare share of the power turned to heat at the tip itself
 */
record LaserFibre(
        LaserCommon common,
        LaserLight light,
        Tip tip,
        double radiusMm,
        double heatedMm,
        AxialProfile profile,
        double tipShare)
        implements HeatDevice {

    /** Where a tip sends its light. */
    enum Tip {
        /** Bare, forward. */
        FORWARD,
        /** Forward with a jacket that keeps the tip off the wall. */
        JACKET,
        /** Sideways all around. */
        RADIAL;

        String id() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    static LaserFibre from(ToDoubleFunction<String> number, LaserCommon common, LaserLight light, Tip tip) {
        String id = "heat.laser." + tip.id() + ".";
        double heatedMm = number.applyAsDouble(id + "length");
        return new LaserFibre(
                common,
                light,
                tip,
                number.applyAsDouble(id + "radius"),
                heatedMm,
                profile(heatedMm, number.applyAsDouble(id + "spread"), common.axialMm(light.wallPerMm(common))),
                number.applyAsDouble(id + "tip-share"));
    }

    @Override
    public double filmMm() {
        return common.filmMm();
    }

    @Override
    public double charDryness() {
        return common.charDryness();
    }

    @Override
    public boolean calibrated() {
        return light.tried();
    }

    @Override
    public boolean leans() {
        return tip != Tip.RADIAL;
    }

    @Override
    public boolean tried(HeatSetting setting) {
        return common.triedSettings().holds(HeatDevice.as(HeatSetting.Pulled.class, setting));
    }

    @Override
    public double charLayerIndex(DeathTally tally) {
        return Si.mm(tally.charredM(common.charS())) / common.charThicknessMm();
    }

    @Override
    public HeatSupply supply(HeatSetting setting, RadialGrid grid, SliceOptics slice) {
        HeatSetting.Pulled pulled = HeatDevice.as(HeatSetting.Pulled.class, setting);
        double setW = pulled.powerW() * slice.powerFactor();
        Pullback pullback = new Pullback(
                profile,
                Si.mPerS(pulled.pullbackSPerCm()),
                common.efficiency() * setW,
                light.deposition(grid, tipShare, common, slice.bloodFraction().orElse(light.usualBlood())));
        return slice.steamReruns() == 0 ? pullback : pullback.inSteam(common.steam(setW));
    }

    private static AxialProfile profile(double heatedMm, double spreadMm, double widenedMm) {
        return new AxialProfile(Si.m(heatedMm), Si.m(Math.hypot(spreadMm, widenedMm)));
    }
}
