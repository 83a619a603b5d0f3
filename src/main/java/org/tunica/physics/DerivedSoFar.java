package org.tunica.physics;

import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;

/**
 * What is computed for a segment as long as the heat model has not run.
 *
 * @param derived the numbers, those of heat unknown where they are awaited
 * @param awaited techniques whose heat could be computed and is not yet
 */
public record DerivedSoFar(Derived derived, Set<String> awaited) {
    public DerivedSoFar {
        awaited = Collections.unmodifiableSet(new TreeSet<>(awaited));
    }
}
