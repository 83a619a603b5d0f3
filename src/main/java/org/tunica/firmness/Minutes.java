package org.tunica.firmness;

import java.util.OptionalDouble;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Technique;
import org.tunica.physics.OptionNumbers;

/** How long the work on one segment takes; who plans sessions knows. */
@FunctionalInterface
public interface Minutes {
    /** Working time in minutes; empty when it cannot be told. */
    OptionalDouble of(Technique technique, Segment segment, OptionNumbers numbers);
}
