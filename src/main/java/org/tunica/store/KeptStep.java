package org.tunica.store;

/** A step of a release and how it came. */
public record KeptStep(NewStep step, Stamp stamp) {}
