package org.tunica.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** Releases in the tables that begin with that word. */
final class SqlReleaseShelf implements ReleaseShelf {
    private static final String VERSION = "[0-9]{1,6}\\.[0-9]{1,6}\\.[0-9]{1,6}";
    private static final String DIGEST = "sha256:[0-9a-f]{64}";

    private final Pen pen;
    private final Shelf releases;
    private final Shelf steps;
    private final Shelf signatures;
    private final Shelf shadowRuns;

    SqlReleaseShelf(Pen pen, Shelf releases, Shelf steps, Shelf signatures, Shelf shadowRuns) {
        this.pen = pen;
        this.releases = releases;
        this.steps = steps;
        this.signatures = signatures;
        this.shadowRuns = shadowRuns;
    }

    @Override
    public KeptRelease add(Actor by, String version, String digest, String files) {
        Texts.shaped("version", version, VERSION);
        Texts.shaped("digest", digest, DIGEST);
        Texts.kept("release " + version, files);
        return pen.write(() -> {
            if (one(version).isPresent()) {
                throw new OutOfDate("there is a release " + version + " already; a version is used once");
            }
            List<String> values = List.of(version, digest, files);
            Stamp stamp = pen.keep(by, Act.RELEASE_KEPT, Table.RELEASES, values);
            return new KeptRelease(version, digest, files, stamp);
        });
    }

    @Override
    public Optional<KeptRelease> one(String version) {
        return releases.one("t.version = ?", version).map(SqlReleaseShelf::release);
    }

    @Override
    public KeptStep step(Actor by, NewStep step) {
        Texts.kept("step of release " + step.version(), step.reason());
        return pen.write(() -> {
            List<String> values = List.of(
                    step.version(),
                    next(steps, step.version()),
                    step.act().word(),
                    Long.toString(step.from().toEpochMilli()),
                    step.reviewBy().map(LocalDate::toString).orElse(""),
                    step.reason());
            return new KeptStep(step, pen.keep(by, step.act(), Table.RELEASE_STEPS, values));
        });
    }

    /** The number that follows in a table whose rows are numbered by release. */
    private String next(Shelf shelf, String version) {
        if (one(version).isEmpty()) {
            throw Texts.fault("release " + version, "there is none of that version");
        }
        OptionalLong last = shelf.many("t.version = ?", version).stream()
                .mapToLong(kept -> kept.row().number("number"))
                .max();
        return Long.toString(last.orElse(0) + 1);
    }

    @Override
    public List<KeptStep> steps() {
        return steps.many("t.audit_number > 0 order by t.audit_number").stream()
                .map(SqlReleaseShelf::step)
                .toList();
    }

    @Override
    public KeptSignature sign(Actor by, Act act, String version, String body) {
        Texts.kept("signature of release " + version, body);
        return pen.write(() -> {
            List<String> values = List.of(version, next(signatures, version), body);
            return new KeptSignature(version, body, pen.keep(by, act, Table.RELEASE_SIGNATURES, values));
        });
    }

    @Override
    public List<KeptSignature> signatures(String version) {
        return signatures.many("t.version = ? order by t.number", version).stream()
                .map(kept -> new KeptSignature(version, kept.row().text("body"), kept.stamp()))
                .toList();
    }

    @Override
    public KeptShadowRun shadowRun(Actor by, String shadow, String inForce, String body) {
        Texts.kept("run of shadow " + shadow, body);
        return pen.write(() -> {
            long last = shadowRuns
                    .one("t.shadow = ? order by t.number desc limit 1", shadow)
                    .map(kept -> kept.row().number("number"))
                    .orElse(0L);
            List<String> values = List.of(shadow, Long.toString(last + 1), inForce, body);
            Stamp stamp = pen.keep(by, Act.SHADOW_COMPARED, Table.SHADOW_RUNS, values);
            return new KeptShadowRun(shadow, inForce, body, stamp);
        });
    }

    @Override
    public List<KeptShadowRun> shadowRuns(String shadow) {
        return shadowRuns.many("t.shadow = ? order by t.number", shadow).stream()
                .map(kept -> new KeptShadowRun(
                        shadow, kept.row().text("in_force"), kept.row().text("body"), kept.stamp()))
                .toList();
    }

    private static KeptRelease release(Shelf.Kept kept) {
        Row row = kept.row();
        return new KeptRelease(row.text("version"), row.text("digest"), row.text("files"), kept.stamp());
    }

    private static KeptStep step(Shelf.Kept kept) {
        Row row = kept.row();
        String reviewBy = row.text("review_by");
        NewStep step = new NewStep(
                row.text("version"),
                Words.of(Act.class, row.text("kind")),
                Instant.ofEpochMilli(row.number("from_ms")),
                reviewBy.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(reviewBy)),
                row.text("reason"));
        return new KeptStep(step, kept.stamp());
    }
}
