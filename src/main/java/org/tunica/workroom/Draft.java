package org.tunica.workroom;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Bundle;
import org.tunica.proposal.Opening;
import org.tunica.proposal.WorkingCopy;

/**
 * A working copy as an author edits it: file by file, each saved against what was seen of it.
 *
 * @param copy the folder
 */
public record Draft(WorkingCopy copy) {
    private static final Pattern PATH =
            Pattern.compile("(rules|knowledge|features)/([a-z0-9][a-z0-9-]*/)*[a-z0-9][a-z0-9-]*(\\.[a-z0-9]+)+");

    /** How it began. */
    public Opening opening() {
        return copy.opening();
    }

    /** The number of its record. */
    public String number() {
        return opening().number();
    }

    /** What it is about, as its record says; the number alone when the record cannot be read. */
    public String title() {
        try {
            return copy.record().title();
        } catch (FaultyInput e) {
            return "change " + number();
        }
    }

    /** Every file by path: rules, knowledge and scenarios. */
    public SortedMap<String, String> texts() {
        SortedMap<String, String> texts = new TreeMap<>(copy.after().texts());
        texts.putAll(copy.scenarios());
        return texts;
    }

    /** A file; empty when there is none of that name. */
    public Optional<String> text(String path) {
        return Optional.ofNullable(texts().get(path));
    }

    /**
     * Saves a file, and lists in the change record what the files changed; remarks in the record are lost.
     *
     * @param seen what {@link #mark} gave for the text that was seen; that of the empty text for a file that is new
     * @throws FaultyInput when it was changed since, or cannot be a file of a working copy
     */
    public void save(String author, String path, String seen, String text) {
        mustBeOf(author);
        if (!PATH.matcher(path).matches()) {
            throw fault(
                    path,
                    "is no name of a file here: lower-case letters, digits and hyphens under rules/, "
                            + "knowledge/ or features/, with an ending");
        }
        if (!mark(text(path).orElse("")).equals(seen)) {
            throw fault(path, "was changed meanwhile, here or at the command line; look at it before you save");
        }
        String lines = text.replace("\r\n", "\n");
        if (!path.startsWith("features/")) {
            Bundle.of(Map.of(path, lines)); // refuses what no bundle could hold
        } else if (lines.getBytes(StandardCharsets.UTF_8).length > Bundle.LARGEST_FILE_BYTES) {
            throw fault(path, "is larger than " + Bundle.LARGEST_FILE_BYTES + " bytes");
        }
        try {
            copy.put(path, lines);
            list(path);
        } catch (IOException e) {
            throw fault(path, "cannot be written: " + e.getMessage());
        }
    }

    /** The record lists what the files changed, or the change would not load; one that cannot be read is told by the loading. */
    private void list(String saved) throws IOException {
        if (!saved.startsWith("rules/changes/")) {
            try {
                copy.fillRecord(Optional.empty());
            } catch (FaultyInput e) {
                return;
            }
        }
    }

    /**
     * Ends the work unless somebody is its author.
     *
     * @throws FaultyInput when it is another's
     */
    public void mustBeOf(String author) {
        if (!opening().author().equals(author)) {
            throw fault("change " + number(), "is " + opening().author() + "'s; its author alone edits it");
        }
    }

    /** A short name for a text, to tell whether it is still the same. */
    public static String mark(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private static FaultyInput fault(String place, String says) {
        return new FaultyInput("change", List.of(new Fault(place, says)));
    }
}
