package org.tunica.similar;

import java.util.Optional;
import org.tunica.casefile.Word;

/**
 * Which past segments are looked at; what is absent keeps all.
 *
 * @param technique id of the technique used
 * @param outcome whether it was closed at its last scan
 * @param invented whether the case was made up
 * @param site pseudonym of a clinic
 * @param words each must stand in the notes of the case
 */
public record SimilarFilter(
        Optional<String> technique,
        Optional<Outcome> outcome,
        Optional<Boolean> invented,
        Optional<String> site,
        Optional<String> words) {

    /** Keeps all. */
    public static final SimilarFilter ALL =
            new SimilarFilter(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** How it went by the last scan. */
    public enum Outcome implements Word {
        CLOSED,
        OPEN;

        static Outcome of(boolean closed) {
            return closed ? CLOSED : OPEN;
        }
    }
}
