package org.tunica.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The Flesch-Kincaid grade level (Kincaid, Fishburne, Rogers and Chissom, Naval Technical Training Command, Research Branch
 * Report 8-75, 1975; formula from memory, unverified): 0.39 words a sentence + 11.8 syllables a word - 15.59. Grade 7 is
 * school at about twelve.
 *
 * <p>Syllables are counted by groups of vowels, a silent e at the end apart; of a number every digit counts as one.
 */
final class ReadingGrade {
    private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");

    private ReadingGrade() {}

    static double of(List<String> texts) {
        List<String> sentences =
                texts.stream().flatMap(text -> sentences(text).stream()).toList();
        List<String> words =
                sentences.stream().flatMap(one -> words(one).stream()).toList();
        double syllables = words.stream().mapToInt(ReadingGrade::syllables).sum();
        return 0.39 * words.size() / sentences.size() + 11.8 * syllables / words.size() - 15.59;
    }

    static List<String> sentences(String text) {
        return Arrays.stream(text.split("(?<=[.!?:])\\)?\\s+"))
                .filter(one -> !words(one).isEmpty())
                .toList();
    }

    static List<String> words(String sentence) {
        return Arrays.stream(sentence.split("[^A-Za-z0-9,']+"))
                .map(word -> word.replace(",", ""))
                .filter(word -> !word.isBlank())
                .toList();
    }

    static int syllables(String word) {
        if (word.matches("\\d+")) {
            return word.length();
        }
        String letters = word.toLowerCase(Locale.ROOT);
        String spoken = letters.replaceAll("(?<=[^aeiouyl])e$|(?<=[aeiouy]l)e$|(?<=[^td])ed$", "");
        Matcher groups = VOWELS.matcher(spoken);
        return Math.max(1, (int) groups.results().count());
    }
}
