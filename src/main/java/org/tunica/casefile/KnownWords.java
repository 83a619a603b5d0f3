package org.tunica.casefile;

import java.util.Optional;
import java.util.Set;

/** What a case may name and how large its numbers may be; the knowledge of a release answers it. */
public interface KnownWords {
    /** Ids of techniques, which are also the devices a room may list. */
    Set<String> techniqueIds();

    /** Ids of allergies. */
    Set<String> allergyIds();

    /** Ids of conditions. */
    Set<String> conditionIds();

    /** The plausible range of a number, by its JSON path without indexes, for example {@code limbs.segments.lengthCm}. */
    Optional<PlausibleRange> plausibleRange(String path);
}
