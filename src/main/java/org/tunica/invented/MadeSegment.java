package org.tunica.invented;

import java.util.Optional;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Technique;

/**
 * A segment that was made up, with what its record may leave out.
 *
 * @param segment as it stands in the past case
 * @param technique what it was treated by; nothing was fitting and at hand when there is none
 * @param widthRankFraction how wide it is among the veins treated so, 0 narrowest to 1
 * @param wallRankFraction how thick its wall is for its width, 0 to 1
 */
record MadeSegment(
        Segment segment,
        Optional<Technique> technique,
        double lengthCm,
        double straightCm,
        double lumenDiameterMm,
        double widthRankFraction,
        double wallRankFraction) {}
