package org.tunica.session;

import java.util.List;
import org.tunica.knowledge.Technique;
import org.tunica.physics.AdhesiveAliquots;

/** Where the aliquots of adhesive go over a length, by the settings of the technique. */
final class Adhesive {
    /** Two aliquots close together begin the row. */
    static final int AT_THE_START = 2;

    private static final double BETWEEN_THE_FIRST_TWO_CM = 1;

    private final Technique technique;

    Adhesive(Technique technique) {
        this.technique = technique;
    }

    /** Distances from the upper end of the glued length in cm. */
    List<Double> places(double lengthCm) {
        return new AdhesiveAliquots(0, BETWEEN_THE_FIRST_TWO_CM, setting("aliquotSpacingCm")).atCm(lengthCm);
    }

    double volumeMl(double lengthCm) {
        return places(lengthCm).size() * setting("adhesiveMlPerAliquot");
    }

    private double setting(String id) {
        return technique.settings().get(id).typical().orElseThrow();
    }
}
