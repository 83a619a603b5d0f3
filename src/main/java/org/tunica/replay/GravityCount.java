package org.tunica.replay;

/**
 * How many segments are so grave; each segment counts once.
 *
 * @param says the gravity in words
 */
public record GravityCount(Gravity gravity, String says, int segmentsCount) {}
