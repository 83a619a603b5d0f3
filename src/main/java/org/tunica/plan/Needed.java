package org.tunica.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.tunica.rules.Condition;
import org.tunica.rules.Verdict;

/** Puts verdicts into the words and the order of a short line. */
final class Needed {
    private Needed() {}

    /** "not recorded: depth to the skin, wall thickness". */
    static String line(List<Verdict> needs) {
        return "not recorded: " + String.join(", ", nouns(needs));
    }

    /** What is not recorded, in alphabetical order. */
    static Set<String> nouns(List<Verdict> needs) {
        TreeSet<String> nouns = new TreeSet<>();
        needs.forEach(verdict -> nouns.addAll(nouns(verdict)));
        return nouns;
    }

    private static List<String> nouns(Verdict verdict) {
        if (!verdict.speaks()) {
            return verdict.doubt();
        }
        return verdict.rule().onOption().stream()
                .filter(Condition.Unrecorded.class::isInstance)
                .map(condition -> condition.field().noun())
                .toList();
    }

    static List<Verdict> strongestFirst(List<Verdict> verdicts) {
        return verdicts.stream()
                .sorted(Comparator.comparing(Judged::strength)
                        .thenComparing(verdict -> verdict.rule().id()))
                .toList();
    }
}
