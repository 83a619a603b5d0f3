package org.tunica.replay;

/** How many segments, of how many cases, show a kind of change. */
public record KindCount(ChangedSegment.Kind kind, int segmentsCount, int casesCount) {}
