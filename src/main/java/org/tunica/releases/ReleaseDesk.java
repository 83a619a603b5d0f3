package org.tunica.releases;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.governance.Manifest;
import org.tunica.governance.ReleaseCheck;
import org.tunica.governance.ReleaseFiles;
import org.tunica.governance.ReplayReport;
import org.tunica.governance.SemanticVersion;
import org.tunica.governance.Step;
import org.tunica.governance.StepKind;
import org.tunica.governance.Story;
import org.tunica.governance.Timeline;
import org.tunica.governance.VerifiedRelease;
import org.tunica.knowledge.Bundle;
import org.tunica.store.Actor;
import org.tunica.store.NewStep;
import org.tunica.store.Store;

/** Where releases are moved through their life. Every act is one transaction: it is done, or nothing was. */
public final class ReleaseDesk {
    private final Store store;
    private final Clock clock;
    private final ReleaseRecords records;
    private final Consumer<Bundle> tryOut;

    /** The releases kept in a store, at the time of a clock. What this program cannot run is never put in force. */
    public ReleaseDesk(Store store, Clock clock) {
        this(store, clock, Tunica::of);
    }

    /** @param tryOut throws when the program cannot run a bundle */
    ReleaseDesk(Store store, Clock clock, Consumer<Bundle> tryOut) {
        this.store = store;
        this.clock = clock;
        this.records = new ReleaseRecords(store);
        this.tryOut = tryOut;
    }

    private Instant moment() {
        return clock.instant().truncatedTo(ChronoUnit.MILLIS);
    }

    /**
     * Keeps a release that was built; it is a draft.
     *
     * @throws FaultyInput when its files are not as it says, an author is nobody here, the version is not above the one in
     *     force, or the replay was not made against that one
     */
    public Story keep(Actor by, ReleaseFiles files) {
        Manifest manifest = ReleaseCheck.intact(files);
        return store.together(() -> {
            manifest.authors().forEach(this::mustBeKnown);
            Optional<String> inForce = records.timeline().inForceAt(moment());
            mustBeAbove(inForce, manifest.version());
            inForce.map(version -> records.release(version).files().manifest().rules())
                    .ifPresent(new ReplayReport(files.text(ReleaseFiles.REPLAY))::mustBeAgainst);
            store.releases().add(by, manifest.version(), manifest.digest(), files.packed());
            record(by, manifest.version(), StepKind.BUILT, manifest.title());
            return records.story(manifest.version());
        });
    }

    private void mustBeKnown(String author) {
        if (store.users().find(author).isEmpty()) {
            throw fault("author " + author, "there is nobody of that name");
        }
    }

    /** Another release may have come into force since this one was replayed; nobody then knows what it changes. */
    private void mustBeReplayedAgainst(String before, String version) {
        String rules = records.release(before).files().manifest().rules();
        new ReplayReport(records.release(version).files().text(ReleaseFiles.REPLAY)).mustBeAgainst(rules);
    }

    private static void mustBeAbove(Optional<String> inForce, String version) {
        inForce.filter(other -> SemanticVersion.of(version).compareTo(SemanticVersion.of(other)) <= 0)
                .ifPresent(other -> {
                    throw fault(
                            "release " + version,
                            "is not above " + other + ", which is in force; to go back, roll back");
                });
    }

    /** Hands a draft over to those who review it. */
    public Story submit(Actor by, String version) {
        return move(by, version, StepKind.SUBMITTED, "");
    }

    /** Says no to a release in review. */
    public Story refuse(Actor by, String version, String reason) {
        return move(by, version, StepKind.REFUSED, given(reason));
    }

    /** Takes a release back that was never in force. */
    public Story withdraw(Actor by, String version, String reason) {
        return move(by, version, StepKind.WITHDRAWN, given(reason));
    }

    /**
     * Ends the use of a release that another took the place of.
     *
     * @throws FaultyInput also when it is in force
     */
    public Story retire(Actor by, String version, String reason) {
        return store.together(() -> {
            if (records.timeline().inForceAt(moment()).equals(Optional.of(version))) {
                throw fault("release " + version, "is in force; put another in force first, or roll back");
            }
            return move(by, version, StepKind.RETIRED, given(reason));
        });
    }

    /** Tells that an active release was looked at again, and when next. */
    public Story reviewed(Actor by, String version, LocalDate next, String reason) {
        return store.together(() -> {
            Step step = step(by, StepKind.REVIEWED, moment(), reason, Optional.of(next));
            return write(by, version, step);
        });
    }

    /** Lets a release run silently beside the one in force from now on. */
    public Story shadow(Actor by, String version) {
        tryOut(version);
        return move(by, version, StepKind.SHADOWED, "");
    }

    /** Ends that. */
    public Story endShadow(Actor by, String version) {
        return move(by, version, StepKind.SHADOW_ENDED, "");
    }

    /**
     * Puts an approved release in force at once.
     *
     * @throws FaultyInput with every reason why it may not be
     */
    public Story activate(Actor by, String version) {
        return activate(by, version, Optional.empty());
    }

    /**
     * Puts an approved release in force from a later moment on.
     *
     * @throws FaultyInput with every reason why it may not be
     */
    public Story schedule(Actor by, String version, Instant from) {
        return activate(by, version, Optional.of(from.truncatedTo(ChronoUnit.MILLIS)));
    }

    private Story activate(Actor by, String version, Optional<Instant> planned) {
        tryOut(version);
        return store.together(() -> {
            Instant from = planned.orElseGet(this::moment);
            planned.filter(moment -> !moment.isAfter(moment())).ifPresent(moment -> {
                throw fault("release " + version, "cannot come into force at " + moment + ", which has passed");
            });
            Story story = records.story(version);
            story.with(step(by, StepKind.ACTIVATED, from, "", Optional.empty()));
            records.verified(version).mustBeEffective(from);
            Optional<String> before = records.timeline().inForceAt(from);
            mustBeAbove(before, version);
            before.ifPresent(other -> mustBeReplayedAgainst(other, version));
            return write(by, version, step(by, StepKind.ACTIVATED, from, "", Optional.empty()));
        });
    }

    /**
     * Takes the release in force out of force for good; the one before is in force again at once.
     *
     * @return what became of the one that is in force now
     * @throws FaultyInput when there is none to go back to, or it may not be used
     */
    public Story rollBack(Actor by, String reason) {
        String why = given(reason);
        return store.together(() -> {
            Timeline timeline = records.timeline();
            String bad = timeline.inForceAt(moment()).orElseThrow(() -> fault("rollback", "no release is in force"));
            String before = timeline.inForceWithout(bad, moment())
                    .orElseThrow(() -> fault("rollback", "there is no release before " + bad + " to go back to"));
            VerifiedRelease back = records.verified(before);
            back.mustBeEffective(moment());
            write(by, bad, step(by, StepKind.ROLLED_BACK, moment(), why, Optional.empty()));
            return records.story(before);
        });
    }

    private void tryOut(String version) {
        ReleaseFiles files = records.release(version).files();
        ReleaseCheck.intact(files);
        tryOut.accept(files.bundle());
    }

    private Story move(Actor by, String version, StepKind kind, String reason) {
        return store.together(() -> write(by, version, step(by, kind, moment(), reason, Optional.empty())));
    }

    private Story write(Actor by, String version, Step step) {
        Story story = records.story(version).with(step);
        store.releases()
                .step(by, new NewStep(version, Acts.of(step.kind()), step.from(), step.reviewBy(), step.reason()));
        return story;
    }

    private void record(Actor by, String version, StepKind kind, String reason) {
        store.releases().step(by, new NewStep(version, Acts.of(kind), moment(), Optional.empty(), reason));
    }

    private Step step(Actor by, StepKind kind, Instant from, String reason, Optional<LocalDate> reviewBy) {
        return new Step(Long.MAX_VALUE, kind, moment(), from, by.id(), reason, reviewBy);
    }

    private static String given(String reason) {
        if (reason.isBlank()) {
            throw fault("reason", "must be given: others will want to know why");
        }
        return reason.strip();
    }

    private static FaultyInput fault(String place, String says) {
        return new FaultyInput("release", List.of(new Fault(place, says)));
    }
}
