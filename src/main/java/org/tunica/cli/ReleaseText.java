package org.tunica.cli;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tunica.governance.Manifest;
import org.tunica.governance.SignOff;
import org.tunica.governance.Step;
import org.tunica.governance.Story;
import org.tunica.governance.Timeline;
import org.tunica.signing.Signature;

/** Releases as text for a governance team. */
final class ReleaseText {
    private final Timeline timeline;
    private final Instant now;

    ReleaseText(Timeline timeline, Instant now) {
        this.timeline = timeline;
        this.now = now;
    }

    /** One line: where it stands. */
    String line(Story story) {
        List<String> says = new ArrayList<>();
        says.add(story.stateAt(now).words());
        story.scheduledAt(now).ifPresent(from -> says.add("comes into force at " + from));
        if (timeline.inForceAt(now).equals(Optional.of(story.version()))) {
            says.add("IN FORCE since " + story.inForceSince(now).orElseThrow());
        }
        timeline.supersededBy(story.version(), now).ifPresent(later -> says.add("superseded by " + later));
        if (timeline.shadowAt(now).equals(Optional.of(story.version()))) {
            says.add("runs as a shadow");
        }
        return "Release " + story.version() + ": " + String.join(", ", says) + ".";
    }

    /** Every release, or that there is none. */
    String all() {
        if (timeline.stories().isEmpty()) {
            return "No release is kept here.\n";
        }
        StringBuilder out = new StringBuilder();
        timeline.stories().forEach(story -> out.append(line(story)).append('\n'));
        if (timeline.inForceAt(now).isEmpty()) {
            out.append("None is in force: outputs say DRAFT.\n");
        }
        return out.toString();
    }

    /** All that is known of one. */
    String one(Story story, Manifest manifest, SignOff signOff) {
        StringBuilder out = new StringBuilder(line(story)).append('\n');
        facts(story, manifest).forEach(fact -> out.append("  ").append(fact).append('\n'));
        out.append('\n').append(signatures(signOff)).append("\nWhat became of it:\n");
        story.steps().forEach(step -> out.append("  ").append(step(step)).append('\n'));
        return out.toString();
    }

    private static List<String> facts(Story story, Manifest manifest) {
        List<String> facts = new ArrayList<>();
        facts.add("what is new:    " + manifest.title());
        facts.add("written by:     " + String.join(", ", manifest.authors()));
        facts.add("changes:        " + String.join(", ", manifest.changes()));
        facts.add("built:          " + manifest.builtOn() + " with program " + manifest.program());
        story.approvedOn().ifPresent(day -> facts.add("approved on:    " + day));
        story.lastReviewed().ifPresent(day -> facts.add("last reviewed:  " + day));
        facts.add("effective:      "
                + manifest.effectiveFrom().map(day -> "from " + day).orElse("from its activation")
                + manifest.effectiveTo().map(day -> " to " + day).orElse(""));
        facts.add("review by:      " + story.reviewBy().orElse(manifest.reviewBy()));
        facts.add("manifest:       " + manifest.digest());
        facts.add("rules:          " + manifest.rules());
        facts.add("replay:         " + manifest.replay());
        facts.add("files:          " + manifest.files().size());
        manifest.leftOut().forEach(left -> facts.add("not in it:      " + left));
        return facts;
    }

    /** Who signed, whose signature does not count, who has to sign. */
    static String signatures(SignOff signOff) {
        StringBuilder out = new StringBuilder("Signatures:\n");
        signOff.counted()
                .forEach(signature ->
                        out.append("  ").append(signature(signature)).append('\n'));
        signOff.uncounted()
                .forEach(fault -> out.append("  does not count: ").append(fault).append('\n'));
        signOff.missing()
                .forEach(missing -> out.append("  missing: ").append(missing).append('\n'));
        return out.toString();
    }

    private static String signature(Signature signature) {
        return signature.statement().person() + ", "
                + signature.statement().role().words() + ", "
                + signature.statement().at() + " (key "
                + signature.statement().keyId() + "): "
                + switch (signature.statement().purpose()) {
                    case SIGN_OFF -> "signed the release";
                    case ACKNOWLEDGE_REPLAY -> "read the replay";
                };
    }

    private static String step(Step step) {
        return step.at() + "  " + step.kind().word().replace('-', ' ') + " by " + step.by()
                + (step.from().isAfter(step.at()) ? ", for " + step.from() : "")
                + (step.reason().isEmpty() ? "" : ": " + step.reason());
    }
}
