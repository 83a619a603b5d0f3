package org.tunica.treatment;

import java.util.OptionalDouble;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Family;

/**
 * What was done where.
 *
 * @param ref name of the segment in the case
 * @param technique id of the technique
 * @param says the technique in words
 * @param deliveredLengthCm length treated by the record of the delivery
 */
public record TreatedSegment(
        String ref,
        Limb.Side side,
        Segment.Vein vein,
        Segment.Level level,
        String technique,
        String says,
        Family family,
        OptionalDouble deliveredLengthCm) {}
