package org.tunica.web;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Fault;
import org.tunica.governance.Manifest;
import org.tunica.governance.SignOff;
import org.tunica.governance.Story;
import org.tunica.governance.Timeline;

/**
 * Where a release stands and who signed it.
 *
 * @param title what is new in it
 * @param changes numbers of the change records that are new in it
 * @param digest of its manifest: what is signed
 * @param replayDigest what is acknowledged
 * @param signed signatures that count
 * @param uncounted signatures that do not, each with why
 * @param missing who has to sign, in words
 */
record ReleaseLine(
        String version,
        String state,
        boolean inForce,
        String title,
        List<String> authors,
        List<String> changes,
        String digest,
        String replayDigest,
        List<Signed> signed,
        List<String> uncounted,
        List<String> missing,
        Optional<Instant> scheduledAt,
        Optional<LocalDate> approvedOn,
        LocalDate reviewBy) {
    /** Who signed as what. */
    record Signed(String person, String role, String purpose, Instant at) {}

    static ReleaseLine of(Timeline timeline, Story story, Manifest manifest, SignOff signOff, Instant now) {
        return new ReleaseLine(
                story.version(),
                story.stateAt(now).word(),
                timeline.inForceAt(now).equals(Optional.of(story.version())),
                manifest.title(),
                manifest.authors(),
                manifest.changes(),
                manifest.digest(),
                manifest.replay(),
                signed(signOff),
                signOff.uncounted().stream().map(Fault::toString).toList(),
                signOff.missing(),
                story.scheduledAt(now),
                story.approvedOn(),
                story.reviewBy().orElse(manifest.reviewBy()));
    }

    private static List<Signed> signed(SignOff signOff) {
        return signOff.counted().stream()
                .map(signature -> signature.statement())
                .map(statement -> new Signed(
                        statement.person(),
                        statement.role().word(),
                        statement.purpose().word(),
                        statement.at()))
                .toList();
    }
}
