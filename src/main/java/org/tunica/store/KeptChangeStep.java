package org.tunica.store;

/**
 * A step of a proposed change that is kept.
 *
 * @param step counts from 1 for each change
 */
public record KeptChangeStep(NewChangeStep what, long step, Stamp stamp) {}
