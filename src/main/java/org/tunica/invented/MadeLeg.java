package org.tunica.invented;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;

/**
 * A leg that was made up.
 *
 * @param segments treated or not
 */
record MadeLeg(
        Limb.Side side,
        Limb.CeapClass ceapClass,
        Limb.DeepVeins deepVeins,
        OptionalDouble ankleBrachialIndex,
        List<MadeSegment> segments) {

    Limb limb() {
        return new Limb(
                side,
                Optional.of(ceapClass),
                ankleBrachialIndex,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.of(deepVeins),
                Optional.empty(),
                segments.stream().map(MadeSegment::segment).toList());
    }

    List<MadeSegment> treated() {
        return segments.stream()
                .filter(segment -> segment.technique().isPresent())
                .toList();
    }

    /** What is known of a segment before anybody asks how it shall be treated. */
    record Found(
            Segment.Vein vein,
            Segment.Level level,
            Segment.Course course,
            Segment.Thrombus thrombus,
            double lengthCm,
            double straightCm) {}
}
