package org.tunica.releases;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.tunica.AdviceListener;
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.governance.Manifest;
import org.tunica.governance.ReleaseCheck;
import org.tunica.governance.ReleaseFiles;
import org.tunica.governance.SignOff;
import org.tunica.governance.Story;
import org.tunica.governance.Timeline;
import org.tunica.governance.VerifiedRelease;

/** Engines for the releases of a place: what is in force now, and what was. Safe for several threads. */
public final class Engines {
    private final ReleaseRecords records;
    private final Clock clock;
    private final Program program;
    private final AdviceListener listener;
    private final Map<String, Loaded> loaded = new ConcurrentHashMap<>();
    private final Map<String, Tunica> shadows = new ConcurrentHashMap<>();

    /** A release and the engine that runs it. */
    private record Loaded(VerifiedRelease release, Tunica tunica) {}

    /**
     * An engine and what its user must know of it.
     *
     * @param version of the release it runs; empty for the program's own rules, which are a draft
     * @param notices sentences; often none
     */
    public record Engine(Tunica tunica, Optional<String> version, List<String> notices) {}

    /** The releases kept in a store, at the time of a clock, run by a program. */
    public Engines(ReleaseRecords records, Clock clock, Program program) {
        this(records, clock, program, AdviceListener.NONE);
    }

    /**
     * The same whose engine in force tells of each advice it gives.
     *
     * @param listener hears of the advices
     */
    public Engines(ReleaseRecords records, Clock clock, Program program, AdviceListener listener) {
        this.records = records;
        this.clock = clock;
        this.program = program;
        this.listener = listener;
    }

    /**
     * What is in force now; without a release the program's own rules, which call themselves a draft.
     *
     * @throws FaultyInput when the release in force does not verify or has run out
     */
    public Engine inForce() {
        Instant now = clock.instant();
        Timeline timeline = records.timeline();
        Optional<String> version = timeline.inForceAt(now);
        return version.map(known -> inForce(known, timeline, now))
                .orElseGet(() -> new Engine(
                        Tunica.shipped(),
                        Optional.empty(),
                        List.of("No release is in force here; these are the program's own rules, a DRAFT that nobody"
                                + " signed.")));
    }

    private Engine inForce(String version, Timeline timeline, Instant now) {
        Loaded known = loaded.computeIfAbsent(version, this::load);
        known.release().mustBeEffective(now);
        SignOff signOff = records.signOff(known.release().manifest());
        if (!signOff.complete()) {
            throw new FaultyInput("release " + version, signOff.faults());
        }
        List<String> notices = new ArrayList<>();
        Manifest manifest = known.release().manifest();
        LocalDate due = timeline.story(version).flatMap(Story::reviewBy).orElse(manifest.reviewBy());
        if (LocalDate.ofInstant(now, ZoneOffset.UTC).isAfter(due)) {
            notices.add("Release " + version + " was to be reviewed by " + due + "; its review is overdue.");
        }
        aboutTheProgram(manifest).ifPresent(notices::add);
        return new Engine(known.tunica(), Optional.of(version), notices);
    }

    /** The engine of a version that spoke already. */
    Optional<Engine> loaded(String version) {
        return Optional.ofNullable(loaded.get(version))
                .map(known -> new Engine(known.tunica(), Optional.of(version), List.of()));
    }

    private Loaded load(String version) {
        VerifiedRelease release = records.verified(version);
        return new Loaded(release, Tunica.inForce(release, listener));
    }

    /**
     * The release that runs silently beside; its outputs say DRAFT, whoever should see one.
     *
     * @throws FaultyInput when its files are not as it says
     */
    Optional<Engine> shadow() {
        return records.timeline()
                .shadowAt(clock.instant())
                .map(version -> new Engine(
                        shadows.computeIfAbsent(version, this::loadShadow), Optional.of(version), List.of()));
    }

    private Tunica loadShadow(String version) {
        ReleaseFiles files = records.release(version).files();
        ReleaseCheck.intact(files);
        return Tunica.of(files.bundle());
    }

    /**
     * What was in force: by a version, a day, or a moment such as 2026-03-01T08:00:00Z.
     *
     * @throws FaultyInput when nothing was, or on that day one release gave way to another
     */
    public Engine asOf(String named) {
        Timeline timeline = records.timeline();
        Instant moment = timeline.story(named).map(this::lastInForce).orElseGet(() -> moment(named, timeline));
        if (moment.isAfter(clock.instant())) {
            throw fault(named, "lies ahead");
        }
        String version = timeline.story(named)
                .map(Story::version)
                .or(() -> timeline.inForceAt(moment))
                .orElseThrow(() -> fault(named, "no release was in force"));
        VerifiedRelease release = records.verified(version, moment);
        release.mustBeEffective(moment);
        List<String> notices = new ArrayList<>();
        notices.add(
                timeline.inForceAt(clock.instant()).equals(Optional.of(version))
                        ? "Release " + version + " is the one in force."
                        : "As of then: release " + version + ", which is not in force now. Do not act on it.");
        records.signOff(release.manifest())
                .faults()
                .forEach(fault -> notices.add("By the keys as they count today: " + fault + "."));
        aboutTheProgram(release.manifest()).ifPresent(notices::add);
        return new Engine(Tunica.inForce(release, AdviceListener.NONE), Optional.of(version), notices);
    }

    private Instant lastInForce(Story story) {
        return story.inForceSince(clock.instant())
                .orElseThrow(() -> fault("release " + story.version(), "never was in force"));
    }

    private static Instant moment(String named, Timeline timeline) {
        try {
            return named.contains("T") ? Instant.parse(named) : within(LocalDate.parse(named), timeline);
        } catch (DateTimeParseException e) {
            throw fault(
                    named,
                    "is neither a version kept here nor a day such as 2026-03-01 nor a moment such as"
                            + " 2026-03-01T08:00:00Z");
        }
    }

    /** A moment of a day; a day on which the release changed tells too little. */
    private static Instant within(LocalDate day, Timeline timeline) {
        Instant begin = day.atStartOfDay(ZoneOffset.UTC).toInstant();
        Instant end = day.plusDays(1).atStartOfDay(ZoneOffset.UTC).toInstant().minusMillis(1);
        Optional<String> first = timeline.inForceAt(begin);
        Optional<String> last = timeline.inForceAt(end);
        if (!first.equals(last)) {
            throw fault(
                    day.toString(),
                    "on that day " + first.map(version -> "release " + version).orElse("the draft") + " gave way to "
                            + last.map(version -> "release " + version).orElse("none")
                            + "; name the version, or a moment such as " + day + "T08:00:00Z");
        }
        return begin;
    }

    private Optional<String> aboutTheProgram(Manifest manifest) {
        return manifest.program().equals(program.version())
                ? Optional.empty()
                : Optional.of("Release " + manifest.version() + " was built with program " + manifest.program()
                        + "; this is program " + program.version() + ", whose numbers may differ.");
    }

    private static FaultyInput fault(String place, String says) {
        return new FaultyInput("release", List.of(new Fault(place, says)));
    }
}
