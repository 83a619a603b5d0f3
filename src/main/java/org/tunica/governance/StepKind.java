package org.tunica.governance;

import java.util.Optional;
import org.tunica.casefile.Word;

/** What can be recorded of a release. */
public enum StepKind implements Word {
    BUILT(ReleaseState.DRAFT),
    SUBMITTED(ReleaseState.IN_REVIEW),
    REFUSED(ReleaseState.REFUSED),
    WITHDRAWN(ReleaseState.WITHDRAWN),
    APPROVED(ReleaseState.APPROVED),
    /** Put in force, at once or from a later moment on. */
    ACTIVATED(ReleaseState.ACTIVE),
    /** Out of force because it did harm or was wrong; the one before is in force again. */
    ROLLED_BACK(ReleaseState.RETIRED),
    RETIRED(ReleaseState.RETIRED),
    /** Looked at again as planned; changes no approval. */
    REVIEWED,
    /** Runs silently beside the one in force from here on. */
    SHADOWED,
    SHADOW_ENDED;

    private final Optional<ReleaseState> leadsTo;

    StepKind(ReleaseState leadsTo) {
        this.leadsTo = Optional.of(leadsTo);
    }

    StepKind() {
        this.leadsTo = Optional.empty();
    }

    /** The state it leads to, if it changes any. */
    public Optional<ReleaseState> leadsTo() {
        return leadsTo;
    }
}
