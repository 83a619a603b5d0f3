package org.tunica.treatment;

import java.util.ArrayList;
import java.util.List;

/**
 * Where single aliquots of adhesive go, the segmental way (S-0022, from memory): two at the start, then at even distances
 * up to the access.
 *
 * @param startCm distance of the first from the deep junction, cm
 * @param secondCm distance of the second from the first, cm
 * @param spacingCm distance between all others, cm
 */
public record AdhesiveAliquots(double startCm, double secondCm, double spacingCm) {
    public AdhesiveAliquots {
        Checked.within("startCm", startCm, 0, Double.MAX_VALUE);
        Checked.positive("secondCm", secondCm);
        Checked.positive("spacingCm", spacingCm);
    }

    /** Distances from the deep junction in cm, nearest first, none beyond the access. */
    public List<Double> atCm(double accessCm) {
        Checked.positive("accessCm", accessCm);
        List<Double> places = new ArrayList<>();
        if (startCm <= accessCm) {
            places.add(startCm);
        }
        for (int i = 0; second() + i * spacingCm <= accessCm; i++) {
            places.add(second() + i * spacingCm);
        }
        return places;
    }

    /** Adhesive in mL for an access that far from the deep junction. */
    public double volumeMl(double accessCm, double mlPerAliquot) {
        Checked.positive("mlPerAliquot", mlPerAliquot);
        return atCm(accessCm).size() * mlPerAliquot;
    }

    private double second() {
        return startCm + secondCm;
    }
}
