package org.tunica.heat;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;

/**
 * Light of one wavelength in film, wall, tumescent layer and fat; ids {@code heat.light.*}.
 *
 * <pre>mua = water share * mua of water + blood share * mua of blood + background,  mu = sqrt( mua (mua + 3 mus') )</pre>
 *
 * @param waterPerMm absorption of water
 * @param bloodPerMm absorption of blood less its water
 * @param usualBlood blood share of the film of an emptied vein
 * @param wallBlood blood share of the wall
 * @param tried whether bench facts at this wavelength were looked at
 */
record LaserLight(
        double waterPerMm,
        double bloodPerMm,
        double usualBlood,
        double wallBlood,
        Layer film,
        Layer wall,
        Layer tumescent,
        Layer fat,
        boolean tried) {

    /** Water share and reduced scattering of one layer. */
    record Layer(double waterShare, double scatteringPerMm) {
        static Layer from(ToDoubleFunction<String> number, String name) {
            String id = "heat.light." + name;
            return new Layer(number.applyAsDouble(id + ".water-share"), number.applyAsDouble(id + ".scattering"));
        }
    }

    static LaserLight from(ToDoubleFunction<String> number, int wavelengthNm) {
        String id = "heat.light." + wavelengthNm;
        return new LaserLight(
                Si.perMm(number.applyAsDouble(id + ".water")),
                number.applyAsDouble(id + ".blood"),
                number.applyAsDouble("heat.light.film.blood-share"),
                number.applyAsDouble("heat.light.wall.blood-share"),
                Layer.from(number, "film"),
                Layer.from(number, "wall"),
                Layer.from(number, "tumescent"),
                Layer.from(number, "fat"),
                number.applyAsDouble(id + ".tried") == 1);
    }

    /** Attenuation of the wet wall, 1/mm. */
    double wallPerMm(LaserCommon common) {
        return perMm(wall, wallBlood, common);
    }

    private double perMm(Layer layer, double blood, LaserCommon common) {
        double absorbed = layer.waterShare() * waterPerMm + blood * bloodPerMm + common.backgroundPerMm();
        return Math.sqrt(absorbed * (absorbed + 3 * layer.scatteringPerMm()));
    }

    Deposition deposition(RadialGrid grid, double tipShare, LaserCommon common, double filmBlood) {
        double[] wet = new double[grid.cells];
        Arrays.fill(wet, 0, grid.filmCells, Si.perM(perMm(film, filmBlood, common)));
        Arrays.fill(wet, grid.filmCells, grid.wallEnd, Si.perM(wallPerMm(common)));
        Arrays.fill(wet, grid.wallEnd, grid.tumescentEnd, Si.perM(perMm(tumescent, 0, common)));
        Arrays.fill(wet, grid.tumescentEnd, grid.cells, Si.perM(perMm(fat, 0, common)));
        double[] dry = wet.clone();
        Arrays.fill(dry, 0, grid.filmCells, Si.perM(common.dryFilmPerMm()));
        Arrays.fill(dry, grid.filmCells, grid.wallEnd, Si.perM(common.dryWallPerMm()));
        return new LightDeposition(grid, tipShare, wet, dry);
    }
}
