package org.tunica.invented;

import java.util.Optional;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Knowledge;

/** How deep a vein lies, within what the way chosen for it asks of the depth. */
final class Depths {
    private final Curve any;
    private final Curve heated;
    private final Curve inFocus;

    Depths(Knowledge knowledge, Segment.Vein vein) {
        this.any = Curve.of(knowledge.invented("invented.depth." + vein.word()));
        this.heated = any.within(knowledge.value("heat.skin-gap.min"), Double.MAX_VALUE);
        this.inFocus = any.within(knowledge.value("focus.depth.min"), knowledge.value("focus.depth.max"));
    }

    double of(Draw draw, Optional<Family> family) {
        Curve curve = family.map(way -> way == Family.HEAT ? heated : way == Family.FOCUSED_ULTRASOUND ? inFocus : any)
                .orElse(any);
        return Made.rounded(curve.from(draw), 1);
    }
}
