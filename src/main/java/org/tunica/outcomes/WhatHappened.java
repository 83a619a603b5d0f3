package org.tunica.outcomes;

import java.util.List;
import java.util.OptionalInt;

/**
 * What happened to a group of treated segments, by technique and definition of closure, the largest group first.
 *
 * @param segments how many there are; absent when that would tell the size of a group that is hidden
 * @param invented whether any of them is made up
 * @param techniques what became of them
 * @param notTold groups too small to tell of
 * @param neverFollowed segments with no follow-up at all, of all segments
 * @param cautions how to read it
 */
public record WhatHappened(
        OptionalInt segments,
        boolean invented,
        List<TechniqueOutcome> techniques,
        List<NotTold> notTold,
        Counted neverFollowed,
        List<String> cautions) {
    public WhatHappened {
        techniques = List.copyOf(techniques);
        notTold = List.copyOf(notTold);
        cautions = List.copyOf(cautions);
    }
}
