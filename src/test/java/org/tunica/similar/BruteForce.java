package org.tunica.similar;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Looks at every entry by the definition alone; shares nothing with the index but {@link Similarity#score}. */
final class BruteForce {
    private final Similarity similarity;
    private final List<Entry> entries;

    BruteForce(Similarity similarity, List<Entry> entries) {
        this.similarity = similarity;
        this.entries = entries;
    }

    record Answer(List<String> best, long considered, long tooLittleKnown) {}

    /** A hit as text: which segment, and how alike it is to the last digit. */
    static String hit(Entry entry, double score) {
        return entry.caseId() + "/" + entry.place() + " " + score;
    }

    Answer nearest(Profile query, SimilarFilter filter, int most) {
        List<Entry> considered =
                entries.stream().filter(entry -> passes(entry, filter)).toList();
        List<Entry> comparable = considered.stream()
                .filter(entry -> !similarity.tooLittleKnown(query, entry.profile()))
                .toList();
        List<String> best = comparable.stream()
                .map(entry -> new Scored(entry, similarity.score(query, entry.profile())))
                .sorted(Comparator.comparingDouble((Scored one) -> -one.score())
                        .thenComparing(one -> one.entry().caseId())
                        .thenComparingInt(one -> one.entry().place()))
                .limit(most)
                .map(one -> hit(one.entry(), one.score()))
                .toList();
        return new Answer(best, considered.size(), considered.size() - comparable.size());
    }

    private record Scored(Entry entry, double score) {}

    static boolean passes(Entry entry, SimilarFilter filter) {
        return filter.technique().map(entry.technique()::equals).orElse(true)
                && filter.outcome()
                        .map(outcome -> entry.closed()
                                .filter(closed -> closed == (outcome == SimilarFilter.Outcome.CLOSED))
                                .isPresent())
                        .orElse(true)
                && filter.invented().map(asked -> asked == entry.invented()).orElse(true)
                && filter.site().map(entry.site()::equals).orElse(true)
                && filter.words().map(words -> holds(entry, words)).orElse(true);
    }

    private static boolean holds(Entry entry, String words) {
        List<String> notes =
                List.of(String.join(" ", entry.notes()).toLowerCase(Locale.ROOT).split("\\W+"));
        return List.of(words.toLowerCase(Locale.ROOT).split("\\W+")).stream().allMatch(notes::contains);
    }
}
