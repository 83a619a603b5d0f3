package org.tunica.outcomes;

/**
 * How many veins were closed at a horizon, of those scanned in its window.
 *
 * @param closed of those scanned; one that was treated again is not closed
 */
public record ClosedAt(Horizon horizon, Counted closed) {}
