package org.tunica.pastcases;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.tunica.anonymity.Scrubber;
import org.tunica.anonymity.UnitSpan;
import org.tunica.anonymity.Vocabulary;
import org.tunica.knowledge.ClinicalWords;
import org.tunica.knowledge.Knowledge;

/** Reduces free texts to what may stay in a past case: the vocabulary of a release and measurements. */
public final class NoteScrubber {
    private final Scrubber scrubber;

    /** A scrubber with the vocabulary of a release. */
    public NoteScrubber(Knowledge knowledge) {
        ClinicalWords words = knowledge.words();
        this.scrubber = new Scrubber(new Vocabulary(
                new HashSet<>(words.openers()),
                new HashSet<>(words.lower()),
                new HashSet<>(words.phrases()),
                new HashSet<>(words.abbreviations()),
                new HashSet<>(words.titles()),
                words.units().entrySet().stream()
                        .collect(Collectors.toMap(Map.Entry::getKey, entry -> span(entry.getValue())))));
    }

    /** The texts of which anything stays, each as far as it stays. */
    public List<String> scrub(List<String> texts) {
        return texts.stream()
                .map(scrubber::scrub)
                .filter(text -> !text.isEmpty())
                .toList();
    }

    /** Whether a text is as it would come out. */
    boolean clean(String text) {
        return scrubber.clean(text);
    }

    private static UnitSpan span(ClinicalWords.Span span) {
        return new UnitSpan(span.max(), span.decimals(), span.clear());
    }
}
