package org.tunica.session;

import java.util.List;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Technique;
import org.tunica.physics.AdhesiveAliquots;

/** Where the aliquots of adhesive go over a length, by the settings of the technique. */
final class Adhesive {
    /** Two aliquots close together begin the row. */
    static final int AT_THE_START = 2;

    private final Technique technique;
    private final double betweenTheFirstTwoCm;

    Adhesive(Technique technique, double betweenTheFirstTwoCm) {
        this.technique = technique;
        this.betweenTheFirstTwoCm = betweenTheFirstTwoCm;
    }

    static Adhesive of(Technique technique, Knowledge knowledge) {
        return new Adhesive(technique, knowledge.value("session.adhesive.first-gap"));
    }

    /** Distances from the upper end of the glued length in cm. */
    List<Double> places(double lengthCm) {
        return new AdhesiveAliquots(0, betweenTheFirstTwoCm, setting("aliquotSpacingCm")).atCm(lengthCm);
    }

    double volumeMl(double lengthCm) {
        return places(lengthCm).size() * setting("adhesiveMlPerAliquot");
    }

    private double setting(String id) {
        return technique.settings().get(id).typical().orElseThrow();
    }
}
