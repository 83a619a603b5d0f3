package org.tunica.knowledge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.tunica.casefile.FieldReader;

/** Reads knowledge/vocabulary.yaml, in which each line of a list holds many words. */
final class WordsReader {
    private static final Pattern WORD = Pattern.compile("[a-z]+(?:-[a-z]+)*");
    private static final Pattern OF_A_PHRASE = Pattern.compile("[A-Za-z0-9]+");
    private static final Pattern BLANK = Pattern.compile(" ");
    private static final Pattern BAR = Pattern.compile(" \\| ");

    private final FieldReader reader;
    private final Set<String> seen = new HashSet<>();

    private WordsReader(FieldReader reader) {
        this.reader = reader;
    }

    static ClinicalWords read(FieldReader reader) {
        WordsReader words = new WordsReader(reader);
        List<String> openers = words.words("openers");
        List<String> lower = words.words("lower");
        List<List<String>> phrases = words.phrases();
        List<String> abbreviations = words.entries("abbreviations", BLANK);
        List<String> titles = words.words("titles");
        FieldReader units = reader.required("units", reader.object("units")).orElseGet(() -> reader.emptyPart("units"));
        ClinicalWords read = new ClinicalWords(
                openers, lower, phrases, abbreviations, titles, spans(units), ProvenanceReader.provenance(units));
        units.done();
        reader.done();
        return read;
    }

    private List<String> words(String field) {
        List<String> words = entries(field, BLANK);
        for (String word : words) {
            if (!WORD.matcher(word).matches()) {
                reader.fault(field, "\"" + word + "\" is no word in lower case");
            } else if (!seen.add(word)) {
                reader.fault(field, "\"" + word + "\" stands twice in the vocabulary");
            }
        }
        return words;
    }

    private List<List<String>> phrases() {
        List<List<String>> phrases = new ArrayList<>();
        for (String entry : entries("phrases", BAR)) {
            List<String> words = Arrays.asList(BLANK.split(entry));
            if (words.size() < 2
                    || !words.stream()
                            .allMatch(word -> OF_A_PHRASE.matcher(word).matches())) {
                reader.fault("phrases", "\"" + entry + "\" is not two words or more");
            }
            phrases.add(words);
        }
        return phrases;
    }

    private List<String> entries(String field, Pattern between) {
        if (reader.readable() && !reader.isList(field)) {
            reader.fault(field, "must be a list");
        }
        return reader.texts(field).stream()
                .flatMap(line -> Arrays.stream(between.split(line)))
                .toList();
    }

    private static Map<String, ClinicalWords.Span> spans(FieldReader units) {
        Map<String, ClinicalWords.Span> spans = new TreeMap<>();
        units.object("spans").ifPresent(all -> all.parts().forEach((unit, part) -> spans.put(unit, span(part))));
        return spans;
    }

    private static ClinicalWords.Span span(FieldReader reader) {
        double max = reader.requiredNumber("max");
        double decimals = reader.requiredNumber("decimals");
        if (max <= 0) {
            reader.fault("max", "must be above 0");
        }
        if (decimals < 0 || decimals != Math.rint(decimals)) {
            reader.fault("decimals", "must be a whole number from 0 on");
        }
        ClinicalWords.Span span = new ClinicalWords.Span(
                max,
                (int) decimals,
                reader.required("clear", reader.flag("clear")).orElse(false));
        reader.done();
        return span;
    }
}
