package org.tunica.outcomes;

/** How many treated segments came to this at the deep end at their worst, of those where somebody looked. */
public record AtDeepEnd(DeepEnd worst, Counted seen) {}
