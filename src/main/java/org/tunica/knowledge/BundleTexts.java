package org.tunica.knowledge;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;

/** Gathers the texts of a bundle, wherever they come from, under one set of bounds; every fault is noted. */
final class BundleTexts {
    static final String KNOWLEDGE = "knowledge/";
    static final String RULES = "rules/";
    static final String CHANGES = "rules/changes/";

    /** Cases, not knowledge: passed over. */
    private static final String DEMO = "knowledge/demo/";

    /** A name every file system spells alike, and nobody takes for another: no blank, no step upwards, no odd letter. */
    private static final String STEP = "\\.?[A-Za-z0-9_](?:[A-Za-z0-9._-]*[A-Za-z0-9_-])?";

    private static final Pattern NAME = Pattern.compile(STEP + "(?:/" + STEP + "){0,7}/?");
    private static final int LONGEST_NAME = 200;

    private final SortedMap<String, String> texts = new TreeMap<>();
    private final Map<String, String> spellings = new HashMap<>();
    private final Faults faults = new Faults();
    private long totalBytes;

    /** Notes a fault of the bundle. */
    void fault(String path, String says) {
        faults.add(path, says);
    }

    /** Whether the name can be used; its fault is noted if not. */
    boolean named(String path) {
        if (path.length() > LONGEST_NAME || !NAME.matcher(path).matches()) {
            faults.add(
                    path,
                    "is no name for a file of a bundle: only letters, digits, dot, hyphen and underscore of ASCII in at"
                            + " most 8 steps and " + LONGEST_NAME + " characters, without .. and without a blank");
            return false;
        }
        String other = spellings.putIfAbsent(path.toLowerCase(Locale.ROOT), path);
        if (other != null) {
            faults.add(path, other.equals(path) ? "stands twice" : "differs from " + other + " only in capitals");
            return false;
        }
        return true;
    }

    /** Whether the path is of rules/ or knowledge/ and no case, page or hidden file. */
    static boolean belongs(String path) {
        String name = path.substring(path.lastIndexOf('/') + 1);
        return (path.startsWith(RULES) || path.startsWith(KNOWLEDGE))
                && !path.startsWith(DEMO)
                && !name.isEmpty()
                && !name.startsWith(".")
                && !name.endsWith(".md");
    }

    /** What belongs to neither rules/ nor knowledge/ may be of any kind. */
    private static boolean kind(String path) {
        if (!path.startsWith(RULES) && !path.startsWith(KNOWLEDGE)) {
            return true;
        }
        return path.startsWith(RULES) && !path.startsWith(CHANGES) ? path.endsWith(".rule") : path.endsWith(".yaml");
    }

    /** Takes one file that {@link #belongs}; at most one byte more than the largest file need be given. */
    void put(String path, byte[] bytes) {
        totalBytes += bytes.length;
        if (!kind(path)) {
            faults.add(
                    path,
                    "would not be read: rules/ holds .rule, rules/changes/ and knowledge/ hold .yaml (and all .md, for"
                            + " people)");
        } else if (bytes.length > Bundle.LARGEST_FILE_BYTES) {
            faults.add(path, "is larger than " + Bundle.LARGEST_FILE_BYTES + " bytes");
        } else {
            decode(path, bytes);
        }
        within(path);
    }

    /** Whether no bound on the whole is passed; reading on past one would be what a hostile bundle wants. */
    private void within(String path) {
        if (totalBytes > Bundle.LARGEST_TOTAL_BYTES) {
            stop(
                    path,
                    "with this file the bundle is larger than " + Bundle.LARGEST_TOTAL_BYTES
                            + " bytes; the reading ended here");
        }
        if (texts.size() > Bundle.MOST_FILES) {
            stop(
                    path,
                    "with this file the bundle holds more than " + Bundle.MOST_FILES
                            + " files; the reading ended here");
        }
    }

    /** Ends the reading with the faults found so far and one more. */
    void stop(String path, String says) {
        faults.add(path, says);
        faults.throwIfAny("rules and knowledge");
    }

    private void decode(String path, byte[] bytes) {
        try {
            texts.put(
                    path,
                    StandardCharsets.UTF_8
                            .newDecoder()
                            .decode(ByteBuffer.wrap(bytes))
                            .toString());
        } catch (CharacterCodingException e) {
            faults.add(path, "is not UTF-8 text");
        }
    }

    /**
     * The texts by path.
     *
     * @throws FaultyInput with every fault noted
     */
    SortedMap<String, String> texts() {
        faults.throwIfAny("rules and knowledge");
        return texts;
    }
}
