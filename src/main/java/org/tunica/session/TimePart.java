package org.tunica.session;

/**
 * One part of a time estimate.
 *
 * @param workMinutes of work in the room
 */
public record TimePart(String says, double workMinutes) {}
