package org.tunica.web;

import java.time.Instant;
import org.tunica.store.KeptDocument;
import org.tunica.store.Origin;

/** A document of a case in a list, without what is in it. */
record DocumentLine(
        String caseRef,
        long caseVersion,
        String kind,
        long number,
        Instant at,
        String by,
        String releaseVersion,
        String releaseDigest,
        long seed) {

    static DocumentLine of(KeptDocument kept) {
        Origin origin = kept.document().origin();
        return new DocumentLine(
                kept.document().caseRef(),
                kept.document().caseVersion(),
                kept.document().kind().word(),
                kept.number(),
                kept.stamp().at(),
                kept.stamp().by(),
                origin.releaseVersion(),
                origin.releaseDigest(),
                origin.seed());
    }
}
