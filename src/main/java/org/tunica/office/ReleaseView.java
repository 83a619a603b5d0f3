package org.tunica.office;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.governance.Manifest;
import org.tunica.governance.ReleaseFiles;
import org.tunica.governance.ReleaseState;
import org.tunica.governance.ReplayReport;
import org.tunica.governance.SignOff;
import org.tunica.governance.SignedRelease;
import org.tunica.governance.Step;
import org.tunica.governance.Story;
import org.tunica.governance.Timeline;
import org.tunica.releases.ReleaseRecords;
import org.tunica.releases.ShadowRun;

/** Puts together what is known of releases, in words. */
final class ReleaseView {
    private final Desks desks;
    private final ReleaseRecords records;
    private final Timeline timeline;
    private final Instant now;

    ReleaseView(Desks desks) {
        this.desks = desks;
        this.records = desks.records();
        this.timeline = records.timeline();
        this.now = desks.moment();
    }

    Timeline timeline() {
        return timeline;
    }

    Manifest manifest(String version) {
        return records.release(version).files().manifest();
    }

    boolean inForce(String version) {
        return timeline.inForceAt(now).equals(Optional.of(version));
    }

    /** Where a release stands, in words. */
    String state(Story story) {
        List<String> says = new ArrayList<>(List.of(story.stateAt(now).words()));
        if (inForce(story.version())) {
            says.add("IN FORCE since " + story.inForceSince(now).orElseThrow());
        } else {
            timeline.supersededBy(story.version(), now).ifPresent(by -> says.add("superseded by " + by));
        }
        story.scheduledAt(now).ifPresent(from -> says.add("comes into force at " + from));
        if (timeline.shadowAt(now).equals(Optional.of(story.version()))) {
            says.add("runs as a shadow");
        }
        return String.join(", ", says);
    }

    ReleasesPage.Row row(Story story) {
        Manifest manifest = manifest(story.version());
        SignOff signOff = records.signOff(manifest);
        return new ReleasesPage.Row(
                story.version(),
                manifest.title(),
                state(story),
                effective(manifest),
                String.join("; ", Signers.signed(signOff)),
                String.join("; ", signOff.missing()),
                manifest.digest());
    }

    private static String effective(Manifest manifest) {
        return manifest.effectiveFrom().map(day -> "from " + day).orElse("from its activation")
                + manifest.effectiveTo().map(day -> " to " + day).orElse("");
    }

    List<ReleasePage.Fact> facts(Story story, Manifest manifest) {
        List<ReleasePage.Fact> facts = new ArrayList<>();
        facts.add(new ReleasePage.Fact("What is new", manifest.title()));
        facts.add(new ReleasePage.Fact("Written by", String.join(", ", manifest.authors())));
        facts.add(new ReleasePage.Fact("Changes", String.join(", ", manifest.changes())));
        facts.add(new ReleasePage.Fact("Built", manifest.builtOn() + " with program " + manifest.program()));
        facts.add(new ReleasePage.Fact(
                "Approved on", story.approvedOn().map(Object::toString).orElse("not yet")));
        facts.add(new ReleasePage.Fact(
                "Last reviewed", story.lastReviewed().map(Object::toString).orElse("never since")));
        facts.add(new ReleasePage.Fact("Effective", effective(manifest)));
        facts.add(new ReleasePage.Fact(
                "Review by", story.reviewBy().orElse(manifest.reviewBy()).toString()));
        facts.add(new ReleasePage.Fact("Digest of the manifest", manifest.digest()));
        facts.add(new ReleasePage.Fact("Digest of rules and knowledge", manifest.rules()));
        facts.add(new ReleasePage.Fact("Digest of the replay", manifest.replay()));
        return facts;
    }

    static String step(Step step) {
        return step.at() + " " + step.kind().word().replace('-', ' ') + " by " + step.by()
                + (step.from().isAfter(step.at()) ? ", for " + step.from() : "")
                + step.reviewBy().map(day -> ", next review by " + day).orElse("")
                + (step.reason().isEmpty() ? "" : ": " + step.reason());
    }

    List<String> shadow(String version) {
        ShadowRun.Counts counts = desks.shadow().counts(version);
        if (counts.runs() == 0) {
            return List.of();
        }
        List<String> says = new ArrayList<>();
        says.add(counts.runs() + " advices were asked again; in " + counts.casesChanged()
                + " something came out otherwise, " + counts.failures() + " failed.");
        counts.segmentsByKind()
                .forEach((kind, count) -> says.add(kind.word().replace('-', ' ') + ": " + count + " segments"));
        counts.segmentsByRule()
                .forEach((rule, kinds) -> says.add(rule + " turned: "
                        + kinds.values().stream()
                                .mapToInt(Integer::intValue)
                                .max()
                                .orElse(0) + " segments"));
        return says;
    }

    static List<ReleasePage.Folder> contents(Manifest manifest) {
        Map<String, List<String>> folders = new TreeMap<>();
        manifest.files().forEach(file -> {
            int slash = file.path().indexOf('/');
            folders.computeIfAbsent(
                            slash < 0 ? "by itself" : file.path().substring(0, slash), name -> new ArrayList<>())
                    .add(file.path() + "  " + file.sha256());
        });
        return folders.entrySet().stream()
                .map(folder -> new ReleasePage.Folder(folder.getKey(), folder.getValue()))
                .toList();
    }

    /** Why the replay tells nothing of what this release would change now. */
    String stale(Story story, SignedRelease release) {
        ReleaseState state = story.stateAt(now);
        Optional<String> against = timeline.inForceAt(now).filter(other -> !other.equals(story.version()));
        if (against.isEmpty() || state.compareTo(ReleaseState.APPROVED) > 0) {
            return "";
        }
        try {
            new ReplayReport(release.files().text(ReleaseFiles.REPLAY))
                    .mustBeAgainst(manifest(against.get()).rules());
            return "";
        } catch (FaultyInput e) {
            return "Release " + against.get() + " came into force after the replay was made, so this one cannot come"
                    + " into force: begin the change anew with " + against.get() + ".";
        }
    }

    static List<String> faults(List<Fault> faults) {
        return faults.stream().map(Fault::toString).toList();
    }
}
