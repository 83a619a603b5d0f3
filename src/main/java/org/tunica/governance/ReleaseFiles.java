package org.tunica.governance;

import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.Sha256;
import org.tunica.knowledge.Bundle;

/** The files of a release by path, the manifest among them; signatures stand apart. Immutable. */
public final class ReleaseFiles {
    /** Where the manifest stands. */
    public static final String MANIFEST = "manifest.json";

    /** Where an archive keeps the signatures; no file of the release itself. */
    public static final String SIGNATURES = "signatures.json";

    /** Where the replay stands. */
    public static final String REPLAY = "replay.json";

    /** Where the list of parts of the program stands, in the open format CycloneDX. */
    public static final String PARTS = "sbom.json";

    private final SortedMap<String, String> texts;

    private ReleaseFiles(SortedMap<String, String> texts) {
        this.texts = Collections.unmodifiableSortedMap(texts);
    }

    /** Files by path. */
    public static ReleaseFiles of(Map<String, String> texts) {
        return new ReleaseFiles(new TreeMap<>(texts));
    }

    /**
     * The files of an archive, its signatures not among them.
     *
     * @throws FaultyInput with every fault, as {@link Bundle#inArchive} tells them
     */
    public static ReleaseFiles in(Path zip) {
        SortedMap<String, String> all = Bundle.everyTextIn(zip);
        all.remove(SIGNATURES);
        return new ReleaseFiles(all);
    }

    /** The texts by path. */
    public SortedMap<String, String> texts() {
        return texts;
    }

    /**
     * One file.
     *
     * @throws FaultyInput when it is not there
     */
    public String text(String path) {
        String text = texts.get(path);
        if (text == null) {
            throw new FaultyInput("release", List.of(new Fault(path, "is missing")));
        }
        return text;
    }

    /**
     * The manifest.
     *
     * @throws FaultyInput when it is missing or cannot be read
     */
    public Manifest manifest() {
        return Manifest.read(MANIFEST, text(MANIFEST));
    }

    /** The rules and the knowledge among them. */
    public Bundle bundle() {
        SortedMap<String, String> speaking = new TreeMap<>();
        texts.forEach((path, text) -> {
            if (path.startsWith("rules/") || path.startsWith("knowledge/")) {
                speaking.put(path, text);
            }
        });
        return Bundle.of(speaking);
    }

    /** All of them in one text: each path and each text after its length, so nothing can pass for another. */
    public String packed() {
        StringBuilder packed = new StringBuilder();
        texts.forEach((path, text) -> {
            counted(packed, path);
            counted(packed, text);
        });
        return packed.toString();
    }

    private static void counted(StringBuilder packed, String text) {
        packed.append(text.length()).append(':').append(text).append(',');
    }

    /**
     * The files of a packed text.
     *
     * @throws FaultyInput when it is none
     */
    public static ReleaseFiles unpacked(String packed) {
        SortedMap<String, String> texts = new TreeMap<>();
        int[] at = {0};
        while (at[0] < packed.length()) {
            String path = next(packed, at);
            texts.put(path, next(packed, at));
        }
        return new ReleaseFiles(texts);
    }

    private static String next(String packed, int[] at) {
        try {
            int colon = packed.indexOf(':', at[0]);
            int length = Integer.parseInt(packed.substring(at[0], colon));
            String text = packed.substring(colon + 1, colon + 1 + length);
            at[0] = colon + 1 + length + 1;
            return text;
        } catch (IndexOutOfBoundsException | NumberFormatException e) {
            throw new FaultyInput("release", List.of(new Fault("character " + at[0], "the files cannot be read")));
        }
    }

    /** As an archive with the signatures beside; the same release gives the same bytes. */
    public byte[] archive(String signatures) {
        SortedMap<String, String> all = new TreeMap<>(texts);
        all.put(SIGNATURES, signatures);
        return ReleaseArchive.of(all);
    }

    /** Digest of each file but the manifest, by path. */
    List<Manifest.Entry> entries() {
        return texts.entrySet().stream()
                .filter(file -> !file.getKey().equals(MANIFEST))
                .map(file -> new Manifest.Entry(file.getKey(), Sha256.of(file.getValue())))
                .toList();
    }
}
