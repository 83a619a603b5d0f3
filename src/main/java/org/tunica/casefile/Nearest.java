package org.tunica.casefile;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds the known word a mistyped one was probably meant to be. */
public final class Nearest {
    /** A longer word is not compared: the work would grow with its length. */
    private static final int LONGEST_COMPARED = 120;

    private Nearest() {}

    /** The known word with the fewest typing errors, if fewer than half its letters differ. */
    public static Optional<String> to(String written, Collection<String> known) {
        if (written.length() > LONGEST_COMPARED) {
            return Optional.empty();
        }
        return known.stream()
                .map(word -> new Candidate(word, errors(written, word)))
                .filter(candidate -> candidate.errors() >= 0)
                .min(Comparator.comparingInt(Candidate::errors).thenComparing(Candidate::word))
                .map(Candidate::word);
    }

    /** How many typing errors lie between, or -1 for more than half the letters. */
    private static int errors(String written, String word) {
        int most = Math.max(written.length(), word.length()) / 2;
        if (Math.abs(written.length() - word.length()) > most) {
            return -1;
        }
        return new LevenshteinDistance(most).apply(written, word);
    }

    private record Candidate(String word, int errors) {}

    /** {@code "; did you mean X?"} or nothing. */
    public static String hint(String written, Collection<String> known) {
        return to(written, known)
                .map(word -> "; did you mean \"" + word + "\"?")
                .orElse("");
    }
}
