package org.tunica.governance;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Sha256;

/**
 * What a release says of itself; its text is what people sign.
 *
 * @param program version of the program that built it
 * @param builtOn UTC
 * @param authors user names of everybody who wrote what is new in it
 * @param changes numbers of the change records that are new in it
 * @param effectiveFrom first day it may be in force, UTC
 * @param effectiveTo last day it may be in force, UTC
 * @param reviewBy day by which it is to be looked at again
 * @param rules digest over rules and knowledge, as outputs show it
 * @param replay digest of the replay that was made of it
 * @param leftOut what a release usually holds and this one does not, with why
 * @param files every other file, by path
 */
public record Manifest(
        String version,
        String title,
        String program,
        LocalDate builtOn,
        List<String> authors,
        List<String> changes,
        Optional<LocalDate> effectiveFrom,
        Optional<LocalDate> effectiveTo,
        LocalDate reviewBy,
        String rules,
        String replay,
        List<String> leftOut,
        List<Entry> files) {
    /** The word a manifest carries under {@code format}. */
    public static final String FORMAT = "tunica-release/1";

    public Manifest {
        authors = List.copyOf(authors);
        changes = List.copyOf(changes);
        leftOut = List.copyOf(leftOut);
        files = List.copyOf(files);
    }

    /** One file of a release. */
    public record Entry(String path, String sha256) {}

    /** The canonical text: JSON in fixed order. */
    public String text() {
        return ManifestText.of(this);
    }

    /** Digest of the text: what a signature covers. */
    public String digest() {
        return Sha256.of(text());
    }

    /**
     * Reads a manifest.
     *
     * @throws org.tunica.casefile.FaultyInput with every fault, also when the text is not the canonical one
     */
    public static Manifest read(String what, String text) {
        return ManifestText.read(what, text);
    }
}
