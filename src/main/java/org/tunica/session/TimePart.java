package org.tunica.session;

/**
 * One part of a time estimate.
 *
 * @param minutes of work in the room
 */
public record TimePart(String says, double minutes) {}
