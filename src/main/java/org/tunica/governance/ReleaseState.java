package org.tunica.governance;

import java.util.List;
import java.util.Set;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.Word;

/** Where a release stands in its life. A life goes forwards: what was left never comes again. */
public enum ReleaseState implements Word {
    /** Built; its author may still take it back. */
    DRAFT,
    /** Others look at it. */
    IN_REVIEW,
    /** Signed by everybody who must. */
    APPROVED,
    /** In use, or ready to be again when a later one is rolled back. */
    ACTIVE,
    /** Out of use for good. */
    RETIRED,
    /** A reviewer said no. */
    REFUSED,
    /** Taken back before it was ever in use. */
    WITHDRAWN;

    /** The states that may follow. */
    public Set<ReleaseState> next() {
        return switch (this) {
            case DRAFT -> Set.of(IN_REVIEW, WITHDRAWN);
            case IN_REVIEW -> Set.of(APPROVED, REFUSED, WITHDRAWN);
            case APPROVED -> Set.of(ACTIVE, WITHDRAWN);
            case ACTIVE -> Set.of(RETIRED);
            case RETIRED, REFUSED, WITHDRAWN -> Set.of();
        };
    }

    /**
     * The state that follows.
     *
     * @throws FaultyInput with the reason when it may not
     */
    public ReleaseState to(ReleaseState following, String version) {
        if (!next().contains(following)) {
            throw new FaultyInput(
                    "release", List.of(new Fault("release " + version, "is " + words() + " and " + why(following))));
        }
        return following;
    }

    private String why(ReleaseState following) {
        if (this == following) {
            return "cannot become so again";
        }
        if (next().isEmpty()) {
            return "stays so; make a new version";
        }
        if (following.ordinal() < ordinal()) {
            return "is never " + following.words() + " again; make a new version";
        }
        return switch (following) {
            case REFUSED -> "can be refused only while it is in review";
            case WITHDRAWN -> "can only be retired: it has been in use";
            default -> "must be " + before(following).words() + " before it can be " + following.words();
        };
    }

    private static ReleaseState before(ReleaseState following) {
        return values()[following.ordinal() - 1];
    }

    /** The word as it stands in a sentence. */
    public String words() {
        return word().replace('-', ' ');
    }
}
