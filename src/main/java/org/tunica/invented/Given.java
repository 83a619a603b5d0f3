package org.tunica.invented;

import java.util.Optional;
import org.tunica.casefile.Limb;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Technique;
import org.tunica.treatment.ClosureDefinition;
import org.tunica.treatment.DeliveredSegment;

/**
 * What one segment was given and what became of it.
 *
 * @param failsOnDay from which it no longer counts as closed
 */
record Given(
        Limb.Side side,
        MadeSegment made,
        DeliveredSegment delivered,
        double treatedLengthCm,
        ClosureDefinition closure,
        double failsOnDay) {

    Technique technique() {
        return made.technique().orElseThrow();
    }

    Family family() {
        return technique().family();
    }

    String ref() {
        return delivered.ref();
    }

    Optional<Double> powerW() {
        return delivered
                .heat()
                .flatMap(heat ->
                        heat.powerW().isPresent() ? Optional.of(heat.powerW().getAsDouble()) : Optional.empty());
    }
}
