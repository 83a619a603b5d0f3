package org.tunica.store;

import java.util.List;
import java.util.Optional;

/** Releases of rules and knowledge, what became of each, and who signed. Nothing here is ever changed or removed. */
public interface ReleaseShelf {
    /**
     * Keeps a release.
     *
     * @param files all its files in one text
     * @throws OutOfDate when there is one of that version already
     */
    KeptRelease add(Actor by, String version, String digest, String files);

    /** One release with its files. */
    Optional<KeptRelease> one(String version);

    /**
     * Keeps the next step of a release.
     *
     * @throws org.tunica.casefile.FaultyInput when there is no such release
     */
    KeptStep step(Actor by, NewStep step);

    /** Every step of every release, in the order of recording. */
    List<KeptStep> steps();

    /**
     * Keeps the next signature of a release.
     *
     * @throws org.tunica.casefile.FaultyInput when there is no such release
     */
    KeptSignature sign(Actor by, Act act, String version, String body);

    /** The signatures of a release, first to last. */
    List<KeptSignature> signatures(String version);

    /** Keeps what a shadow would have said otherwise, once. */
    KeptShadowRun shadowRun(Actor by, String shadow, String inForce, String body);

    /** The runs of a shadow, first to last. */
    List<KeptShadowRun> shadowRuns(String shadow);
}
