package org.tunica.casefile;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds the known word a mistyped one was probably meant to be. */
public final class Nearest {
    private static final LevenshteinDistance DISTANCE = LevenshteinDistance.getDefaultInstance();

    /** A longer word is not compared: the work would grow with its length. */
    private static final int LONGEST_COMPARED = 120;

    private Nearest() {}

    /** The known word with the fewest typing errors, if fewer than half its letters differ. */
    public static Optional<String> to(String written, Collection<String> known) {
        if (written.length() > LONGEST_COMPARED) {
            return Optional.empty();
        }
        return known.stream()
                .min(Comparator.<String>comparingInt(word -> DISTANCE.apply(written, word))
                        .thenComparing(Comparator.naturalOrder()))
                .filter(word -> DISTANCE.apply(written, word) * 2 <= Math.max(word.length(), written.length()));
    }

    /** {@code "; did you mean X?"} or nothing. */
    public static String hint(String written, Collection<String> known) {
        return to(written, known)
                .map(word -> "; did you mean \"" + word + "\"?")
                .orElse("");
    }
}
