package org.tunica.physics;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is computed for a segment whatever the technique; each part may be unknown.
 *
 * @param wall geometry of the wall
 * @param relaxedLumenMm lumen out of spasm with the patient standing
 * @param standingEstimated whether the standing lumen was estimated from a lying one
 * @param relaxedWallMm wall at the relaxed lumen
 * @param collapsedWallMm wall with the lumen pressed shut
 * @param lumenVolumeMl volume of the relaxed lumen over the length
 * @param wallVolumeMl volume of the wall over the length
 * @param headDownPossible whether patient and table allow the head-down position
 */
public record SegmentNumbers(
        Optional<WallGeometry> wall,
        OptionalDouble relaxedLumenMm,
        boolean standingEstimated,
        OptionalDouble relaxedWallMm,
        OptionalDouble collapsedWallMm,
        OptionalDouble lumenVolumeMl,
        OptionalDouble wallVolumeMl,
        Optional<Boolean> headDownPossible) {}
