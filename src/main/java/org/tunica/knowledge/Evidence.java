package org.tunica.knowledge;

import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Word;

/**
 * One row of the evidence and what became of it: rules or numbers that carry it, or the reason why none does.
 *
 * @param id section and row, for example {@code D-24}
 * @param says the row in our own words, with its figures
 * @param sources ids of sources, at least one
 * @param rules ids of the rules that carry it
 * @param limits numbers of knowledge/ that carry it: a quantity, or technique and key such as {@code steam.pulsesPerCm}
 * @param left why nothing here carries it; present exactly when {@code rules} and {@code limits} are empty
 */
public record Evidence(
        String id,
        String says,
        List<String> sources,
        Tag tag,
        List<String> rules,
        List<String> limits,
        Optional<String> left) {
    public Evidence {
        sources = List.copyOf(sources);
        rules = List.copyOf(rules);
        limits = List.copyOf(limits);
    }

    /** How well the weakest part of a row is known. */
    public enum Tag implements Word {
        /** Read in the abstract or the opening of the source. */
        READ,
        /** Read on a page about the source. */
        SECONDARY,
        /** Remembered, to be checked before anyone signs. */
        MEMORY,
        /** What the trade does without a paper. */
        COMMON_PRACTICE,
        /** Worked out from other rows. */
        ARITHMETIC
    }
}
