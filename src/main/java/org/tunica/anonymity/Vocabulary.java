package org.tunica.anonymity;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * All that may stay of a free text.
 *
 * @param openers words that may also open a sentence with a capital letter: no name is spelled like them
 * @param lower words that stay in lower case only
 * @param phrases words that stay only side by side, because some of them are names when they stand alone
 * @param abbreviations letters that stay exactly as written
 * @param titles words, in lower case, after which somebody is named
 * @param units what may stand before each unit of measure
 */
public record Vocabulary(
        Set<String> openers,
        Set<String> lower,
        Set<List<String>> phrases,
        Set<String> abbreviations,
        Set<String> titles,
        Map<String, UnitSpan> units) {

    public Vocabulary {
        openers = Set.copyOf(openers);
        lower = Set.copyOf(lower);
        phrases = Set.copyOf(phrases);
        abbreviations = Set.copyOf(abbreviations);
        titles = Set.copyOf(titles);
        units = Map.copyOf(units);
    }

    /** Whether a word in lower case may stay on its own. */
    public boolean has(String word) {
        return openers.contains(word) || lower.contains(word);
    }
}
