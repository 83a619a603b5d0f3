package org.tunica.pastcases;

import java.util.HashSet;
import java.util.Map;
import java.util.stream.Collectors;
import org.tunica.anonymity.Scrubber;
import org.tunica.anonymity.UnitSpan;
import org.tunica.anonymity.Vocabulary;
import org.tunica.knowledge.ClinicalWords;
import org.tunica.knowledge.Knowledge;

/** The vocabulary of a release, handed to the scrubber. */
final class Words {
    private Words() {}

    static Scrubber scrubber(Knowledge knowledge) {
        ClinicalWords words = knowledge.words();
        return new Scrubber(new Vocabulary(
                new HashSet<>(words.openers()),
                new HashSet<>(words.lower()),
                new HashSet<>(words.phrases()),
                new HashSet<>(words.abbreviations()),
                new HashSet<>(words.titles()),
                words.units().entrySet().stream()
                        .collect(Collectors.toMap(Map.Entry::getKey, entry -> span(entry.getValue())))));
    }

    private static UnitSpan span(ClinicalWords.Span span) {
        return new UnitSpan(span.max(), span.decimals(), span.clear());
    }
}
