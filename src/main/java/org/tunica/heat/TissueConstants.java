package org.tunica.heat;

import java.util.function.ToDoubleFunction;

/**
 * What tissue is made of and how heat kills it; every number by its id in knowledge/tissue.yaml.
 *
 * @param perfusionPerS volume of blood through one volume of fat per second
 * @param bloodJPerM3K heat capacity of blood
 * @param latentJPerKg heat of evaporation
 * @param boilingC boiling point of tissue water
 * @param bodyC body temperature, held at {@code outerRadiusMm}
 * @param damageFloorC below it no heat death is counted
 * @param charLayerMm inner layer of the wall whose drying is read as charring
 * @param perforationDryShare share of the wall dried at which perforation is feared
 */
record TissueConstants(
        Layer film,
        Layer wall,
        Layer tumescent,
        Layer fat,
        Dry dry,
        double perfusionPerS,
        double bloodJPerM3K,
        double latentJPerKg,
        double boilingC,
        double bodyC,
        double usualTumescentC,
        double usualTumescentMm,
        double outerRadiusMm,
        DamageRate necrosis,
        DamageRate delayed,
        double damageFloorC,
        ThermalDose dose,
        double charLayerMm,
        double perforationDryShare) {

    /** Wet tissue of one layer. */
    record Layer(double conductivityWPerMK, double heatCapacityJPerM3K, double waterKgPerM3) {
        private static Layer from(ToDoubleFunction<String> number, String id) {
            return new Layer(
                    number.applyAsDouble(id + ".conductivity"),
                    number.applyAsDouble(id + ".heat-capacity"),
                    number.applyAsDouble(id + ".water"));
        }
    }

    /** Tissue without water; above {@code capC} it is removed. */
    record Dry(double conductivityWPerMK, double heatCapacityJPerM3K, double capC) {}

    static TissueConstants from(ToDoubleFunction<String> number) {
        return new TissueConstants(
                Layer.from(number, "tissue.film"),
                Layer.from(number, "tissue.wall"),
                Layer.from(number, "tissue.tumescent"),
                Layer.from(number, "tissue.fat"),
                dry(number),
                number.applyAsDouble("tissue.fat.perfusion"),
                number.applyAsDouble("tissue.blood.heat-capacity"),
                number.applyAsDouble("tissue.water.latent-heat"),
                number.applyAsDouble("tissue.water.boiling-point"),
                number.applyAsDouble("tissue.body.temperature"),
                number.applyAsDouble("tissue.tumescent.temperature"),
                number.applyAsDouble("tissue.tumescent.thickness"),
                number.applyAsDouble("tissue.outer.radius"),
                rate(number, "tissue.necrosis"),
                rate(number, "tissue.delayed"),
                number.applyAsDouble("tissue.damage.floor"),
                dose(number),
                number.applyAsDouble("tissue.char.inner-layer"),
                number.applyAsDouble("tissue.perforation.dry-share"));
    }

    private static Dry dry(ToDoubleFunction<String> number) {
        return new Dry(
                number.applyAsDouble("tissue.dry.conductivity"),
                number.applyAsDouble("tissue.dry.heat-capacity"),
                number.applyAsDouble("tissue.dry.temperature-cap"));
    }

    private static DamageRate rate(ToDoubleFunction<String> number, String id) {
        return new DamageRate(number.applyAsDouble(id + ".frequency"), number.applyAsDouble(id + ".activation"));
    }

    private static ThermalDose dose(ToDoubleFunction<String> number) {
        return new ThermalDose(
                number.applyAsDouble("tissue.dose.reference-temperature"),
                number.applyAsDouble("tissue.dose.ratio-above"),
                number.applyAsDouble("tissue.dose.ratio-below"),
                number.applyAsDouble("tissue.dose.floor"));
    }
}
