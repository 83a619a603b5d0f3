package org.tunica.couch;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tunica.store.KeptCase;

/**
 * A version of a case in a list, without what is in it.
 *
 * @param invented whether nobody was ever like this
 */
public record CaseLine(String caseRef, long version, Instant at, String by, long auditNumber, boolean invented) {
    /** Of a version. */
    public static CaseLine of(KeptCase kept, boolean invented) {
        return new CaseLine(
                kept.caseRef(),
                kept.version(),
                kept.stamp().at(),
                kept.stamp().by(),
                kept.stamp().auditNumber(),
                invented);
    }

    /**
     * A stretch of a list of cases.
     *
     * @param next what to ask for as {@code before} to go on; absent at the end
     */
    public record Stretched(List<CaseLine> cases, Optional<Long> next) {}
}
