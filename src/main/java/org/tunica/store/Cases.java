package org.tunica.store;

import java.util.List;
import java.util.Optional;

/** Cases, every version ever saved. */
public interface Cases {
    /** The version a case has that was never saved. */
    long NONE = 0;

    /**
     * Saves the next version of a case; no version is ever written over.
     *
     * @param seen the version this one was made from, {@link #NONE} for a new case
     * @throws OutOfDate when somebody saved another one meanwhile
     */
    KeptCase save(Actor by, String caseRef, long seen, String json);

    /** The latest version of a case. */
    Optional<KeptCase> latest(String caseRef);

    /** One version of a case. */
    Optional<KeptCase> version(String caseRef, long version);

    /** Every version of a case, first to latest. */
    List<KeptCase> history(String caseRef);

    /** The latest versions of cases, the one saved last first. */
    List<KeptCase> newest(Page page);
}
