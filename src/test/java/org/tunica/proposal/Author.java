package org.tunica.proposal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import org.tunica.Tunica;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.ChangeRecord;
import org.tunica.review.RuleReview;

/** An invented author at work in a working copy of the rules shipped. */
public final class Author {
    public static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    public static final String DISTANCES = "knowledge/limits/distances.yaml";

    /** What was loaded once need not be loaded again. */
    private static final ConcurrentHashMap<String, RuleReview> LOADED = new ConcurrentHashMap<>();

    /** What was checked and not edited since need not be checked again. */
    private final Map<String, CheckedChange> checked = new HashMap<>();

    private final Path folder;
    private final WorkingCopy copy;

    private Author(Path folder, WorkingCopy copy) {
        this.folder = folder;
        this.copy = copy;
    }

    public static Author at(Path folder) throws IOException {
        return at(folder, Bundle.shipped(), "draft");
    }

    public static Author at(Path folder, Bundle bundle, String release) throws IOException {
        String number = NewRecord.nextNumber(Tunica.of(bundle).knowledge());
        Opening opening = new Opening(number, "anna", release, bundle.digest(), DAY);
        ChangeRecord record = new NewRecord("A wider gap to the skin", "AK").draft(number, DAY);
        return new Author(folder, WorkingCopy.begin(folder, bundle, ScenarioTexts.in(Path.of("")), opening, record));
    }

    public WorkingCopy copy() {
        return copy;
    }

    public String number() {
        return copy.opening().number();
    }

    public Author edits(String file, String from, String to) {
        try {
            Path path = folder.resolve(file);
            String text = Files.readString(path);
            if (!text.contains(from)) {
                throw new IllegalArgumentException(file + " does not hold " + from);
            }
            Files.writeString(path, text.replaceFirst(Pattern.quote(from), to));
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public Author removes(String file) {
        try {
            Files.delete(folder.resolve(file));
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public Author because(String reason) {
        try {
            copy.fillRecord(Optional.of(reason));
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Moves the gap to the skin from 5 mm to 6 mm, with everything that belongs to it. */
    public Author widensTheGap() {
        return edits(DISTANCES, "value: 5\n", "value: 6\n")
                .edits(DISTANCES, "change: \"0003\"", "change: \"" + number() + "\"")
                .because("a burn at five millimetres and a half, invented");
    }

    public CheckedChange checked() {
        return checked(DAY);
    }

    public CheckedChange checked(LocalDate day) {
        String texts = day + copy.after().digest() + ScenarioTexts.digest(copy.scenarios());
        return checked.computeIfAbsent(texts, same -> new ChangeChecks(copy, Author::load, day).run());
    }

    private static RuleReview load(Bundle bundle) {
        return LOADED.computeIfAbsent(
                bundle.digest(), digest -> Tunica.of(bundle).review());
    }
}
