package org.tunica.watching;

import java.time.Instant;
import java.util.Set;

/**
 * What an advice said, as far as rules are watched.
 *
 * @param caseRef only to count a case once
 * @param at when it was given
 * @param release version of the rules behind it
 * @param rules ids of the rules that spoke of any option, for certain or in doubt
 */
public record Heard(String caseRef, Instant at, String release, Set<String> rules) {
    public Heard {
        rules = Set.copyOf(rules);
    }
}
