package org.tunica.drawing;

import java.util.Optional;

/**
 * Nerve or skin beside a wall.
 *
 * @param says which it is, for example {@code sural nerve}
 * @param atMm from the inner face of the wall
 * @param peakC what it feels at its warmest; absent when the technique does not heat, or nothing was computed
 */
public record Warmed(String says, double atMm, Optional<Peak> peakC) {

    /** The warmest moment over all draws, in degrees Celsius. */
    public record Peak(double lowC, double middleC, double highC) {}
}
