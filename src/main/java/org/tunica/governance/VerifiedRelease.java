package org.tunica.governance;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Bundle;

/** A release whose every byte is as its manifest says and whose signatures are complete; only {@link ReleaseCheck} makes one. */
public final class VerifiedRelease {
    private final Manifest manifest;
    private final Bundle bundle;

    VerifiedRelease(Manifest manifest, Bundle bundle) {
        this.manifest = manifest;
        this.bundle = bundle;
    }

    /** What the release says of itself. */
    public Manifest manifest() {
        return manifest;
    }

    /** Its rules and knowledge. */
    public Bundle bundle() {
        return bundle;
    }

    /**
     * Ends the work when the release may not be in force at a moment.
     *
     * @throws FaultyInput with the reason
     */
    public void mustBeEffective(Instant moment) {
        LocalDate day = LocalDate.ofInstant(moment, ZoneOffset.UTC);
        manifest.effectiveFrom().filter(day::isBefore).ifPresent(from -> {
            throw fault("may be in force from " + from + " on, not before");
        });
        manifest.effectiveTo().filter(day::isAfter).ifPresent(to -> {
            throw fault("was made to be in force until " + to + " and has run out; activate another release");
        });
    }

    private FaultyInput fault(String says) {
        return new FaultyInput("release", List.of(new Fault("release " + manifest.version(), says)));
    }
}
