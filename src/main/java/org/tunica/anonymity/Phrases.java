package org.tunica.anonymity;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Finds the phrases of a vocabulary, by their first word. */
final class Phrases {
    private final Map<String, List<List<String>>> byFirst;

    Phrases(Vocabulary vocabulary) {
        this.byFirst = new HashMap<>(vocabulary.phrases().stream()
                .sorted(Comparator.comparingInt((List<String> words) -> words.size())
                        .reversed())
                .collect(Collectors.groupingBy(words -> words.get(0))));
    }

    /** How many chunks from here on are a phrase, the longest there is; none is 0. */
    int at(List<Chunk> chunks, int at, boolean opens) {
        String first = chunks.get(at).core();
        int found = longest(byFirst.getOrDefault(first, List.of()), chunks, at);
        return found == 0 && opens && chunks.get(at).capital()
                ? longest(byFirst.getOrDefault(uncapital(first), List.of()), chunks, at)
                : found;
    }

    private static String uncapital(String word) {
        return word.substring(0, 1).toLowerCase(Locale.ROOT) + word.substring(1);
    }

    private static int longest(List<List<String>> phrases, List<Chunk> chunks, int at) {
        return phrases.stream()
                .filter(words -> fits(words, chunks, at))
                .mapToInt(List::size)
                .findFirst()
                .orElse(0);
    }

    /** No mark may part the words; the first was compared already. */
    private static boolean fits(List<String> words, List<Chunk> chunks, int at) {
        if (at + words.size() > chunks.size()) {
            return false;
        }
        for (int i = 1; i < words.size(); i++) {
            Chunk chunk = chunks.get(at + i);
            if (!chunks.get(at + i - 1).behind().isEmpty()
                    || !chunk.before().isEmpty()
                    || !chunk.core().equals(words.get(i))) {
                return false;
            }
        }
        return true;
    }
}
