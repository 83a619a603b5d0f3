package org.tunica.proposal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.ChangeRecord;
import org.tunica.knowledge.RecordLists;

/**
 * A folder in which somebody changes rules and knowledge: {@code rules/}, {@code knowledge/} and {@code features/} to work
 * on, {@code before/} with what it began with, {@code change.json}. Read anew at every call.
 */
public final class WorkingCopy {
    private static final String OPENING = "change.json";
    private static final String BEFORE = "before";
    private static final String RECORDS = "rules/changes/";

    private final Path folder;
    private final Opening opening;

    private WorkingCopy(Path folder, Opening opening) {
        this.folder = folder;
        this.opening = opening;
    }

    /**
     * Begins a change in a folder, which must not be there yet.
     *
     * @param began how it began
     * @param record the draft of its change record
     * @param scenarios by path, {@code features/...}; may be empty
     * @throws FaultyInput when something of that name is there
     * @throws IOException when the folder cannot be written; what was written of it is then still there
     */
    public static WorkingCopy begin(
            Path folder, Bundle bundle, Map<String, String> scenarios, Opening began, ChangeRecord record)
            throws IOException {
        if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            throw fault(folder, "exists already; a change begins in a folder of its own");
        }
        write(folder.resolve(BEFORE), bundle.texts());
        write(folder.resolve(BEFORE), scenarios);
        write(folder, bundle.texts());
        write(folder, scenarios);
        String slug = record.title().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        String name = record.number() + "-" + slug.replaceAll("^-|-$", "") + ".yaml";
        write(folder, Map.of(RECORDS + name, record.toYaml()));
        // last, so that half a copy is no copy
        write(folder, Map.of(OPENING, began.toJson()));
        return new WorkingCopy(folder, began);
    }

    private static void write(Path folder, Map<String, String> texts) throws IOException {
        for (Map.Entry<String, String> text : texts.entrySet()) {
            Path file = folder.resolve(text.getKey());
            Files.createDirectories(file.getParent());
            Files.writeString(file, text.getValue());
        }
    }

    /**
     * The working copy in a folder.
     *
     * @throws FaultyInput when the folder is none, or what it began with was changed
     */
    public static WorkingCopy in(Path folder) {
        Path file = folder.resolve(OPENING);
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            throw fault(folder, "is no working copy of a change: there is no " + OPENING);
        }
        try {
            WorkingCopy copy = new WorkingCopy(folder, Opening.read(OPENING, Files.readAllBytes(file)));
            if (!copy.before().digest().equals(copy.opening.digest())) {
                throw fault(folder.resolve(BEFORE), "is not what the change began with; it is never to be edited");
            }
            return copy;
        } catch (IOException e) {
            throw fault(file, "cannot be read: " + e.getMessage());
        }
    }

    /** How it began. */
    public Opening opening() {
        return opening;
    }

    /** What it began with. */
    public Bundle before() {
        return Bundle.in(folder.resolve(BEFORE));
    }

    /**
     * The rules and the knowledge as they stand in it now.
     *
     * @throws FaultyInput when a file cannot be taken
     */
    public Bundle after() {
        return Bundle.in(folder);
    }

    /**
     * Writes one of its files whole, or leaves it as it was.
     *
     * @param path under {@code rules/}, {@code knowledge/} or {@code features/}
     */
    public void put(String path, String text) throws IOException {
        Path file = folder.resolve(path);
        Files.createDirectories(file.getParent());
        Path fresh = Files.createTempFile(folder, "saving", null);
        Files.writeString(fresh, text);
        Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** The folder of its scenarios, when there is one. */
    public Optional<Path> features() {
        return Optional.of(folder.resolve(ScenarioTexts.FOLDER)).filter(Files::isDirectory);
    }

    /** Its scenarios by path; none when there is no such folder. */
    public SortedMap<String, String> scenarios() {
        return scenarios(folder);
    }

    /** The scenarios it began with, by path. */
    public SortedMap<String, String> scenariosBefore() {
        return scenarios(folder.resolve(BEFORE));
    }

    private static SortedMap<String, String> scenarios(Path root) {
        try {
            return ScenarioTexts.in(root);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * The record of the change.
     *
     * @throws FaultyInput with every fault of it, or when there is none or more than one of its number
     */
    public ChangeRecord record() {
        Path file = recordFile();
        return ChangeRecord.read(name(file), read(file));
    }

    /**
     * Writes the record anew, with its reason in the author's words and with what the files say it must list. Remarks in
     * the file are lost.
     *
     * @param reason empty to leave it as it is
     */
    public ChangeRecord fillRecord(Optional<String> reason) throws IOException {
        ChangeRecord record = record();
        ChangeRecord told = reason.map(record::because).orElse(record);
        ChangeRecord filled = told.listing(RecordLists.of(before(), after(), opening.number()));
        Files.write(recordFile(), filled.toYaml().getBytes(StandardCharsets.UTF_8));
        return filled;
    }

    private Path recordFile() {
        List<String> names = List.copyOf(
                after().under(RECORDS + opening.number() + "-", ".yaml").keySet());
        if (names.size() != 1) {
            throw fault(
                    folder.resolve(RECORDS),
                    names.isEmpty()
                            ? "holds no record " + opening.number() + "-*.yaml of this change"
                            : "holds more than one record " + opening.number());
        }
        return folder.resolve(names.get(0));
    }

    private String name(Path file) {
        return folder.relativize(file).toString().replace(file.getFileSystem().getSeparator(), "/");
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw fault(file, "cannot be read: " + e.getMessage());
        }
    }

    private static FaultyInput fault(Path place, String says) {
        return new FaultyInput("change", List.of(new Fault(place.toString(), says)));
    }
}
