package org.tunica.similar;

import java.util.Optional;

/**
 * A past segment that was found.
 *
 * @param past the segment with its case
 * @param likeness how alike it is to the one asked about, and why; absent when only words were searched
 */
public record Hit(PastSegment past, Optional<Likeness> likeness) {}
