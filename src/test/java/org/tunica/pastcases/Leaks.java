package org.tunica.pastcases;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.tunica.knowledge.ClinicalWords;

/** Looks for what was planted in what came out; it knows the lists of words and nothing of how texts are scrubbed. */
final class Leaks {
    private static final int SHORTEST_FRAGMENT = 4;
    private static final int SHORTEST_NUMBER = 3;

    private final Set<String> harmless = new HashSet<>();

    Leaks(ClinicalWords words) {
        harmless.addAll(words.openers());
        harmless.addAll(words.lower());
        words.phrases().forEach(harmless::addAll);
        harmless.addAll(words.units().keySet());
    }

    /** The planted strings, whole or in part, that stand in an output. */
    List<String> in(String output, List<String> planted) {
        Set<String> words = tokens(output);
        List<String> found = new ArrayList<>();
        for (String identifier : planted) {
            if (identifier.length() >= SHORTEST_FRAGMENT && output.contains(identifier)) {
                found.add(identifier);
            }
            tokens(identifier).stream()
                    .filter(this::telling)
                    .filter(words::contains)
                    .forEach(found::add);
            fragments(identifier).stream().filter(words::contains).forEach(found::add);
        }
        return found;
    }

    /** Written with a capital or with figures it tells something, even where its small form is a word. */
    private boolean telling(String token) {
        boolean number = token.chars().allMatch(Character::isDigit);
        if (number) {
            return token.length() >= SHORTEST_NUMBER;
        }
        return token.length() >= SHORTEST_FRAGMENT
                && (!harmless.contains(token) || !token.equals(token.toLowerCase(Locale.ROOT)));
    }

    /** Pieces of it that are no words, such as a name without its first letter. */
    private Set<String> fragments(String identifier) {
        Set<String> fragments = new HashSet<>();
        for (String token : tokens(identifier)) {
            for (int from = 0; from < token.length(); from++) {
                for (int to = from + SHORTEST_FRAGMENT; to <= token.length(); to++) {
                    fragments.add(token.substring(from, to));
                }
            }
        }
        fragments.removeIf(fragment -> harmless.contains(fragment.toLowerCase(Locale.ROOT)));
        return fragments;
    }

    private static Set<String> tokens(String text) {
        return Arrays.stream(text.split("[^\\p{L}\\p{N}]+")).collect(Collectors.toSet());
    }
}
