package org.tunica.similar;

import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tunica.casefile.Faults;
import org.tunica.casefile.Nearest;
import org.tunica.knowledge.Comparison;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.LikenessRule;

/** Holds knowledge/similarity.yaml against what the program compares: every field once, every word, nothing unused. */
final class SimilarityChecks {
    private static final String FILE = "knowledge/similarity.yaml: ";

    /** A range in its unit beyond this is a slip of the pen; a table is kept of every thousandth of it. */
    private static final double WIDEST = 1_000;

    private final Vocabulary vocabulary;
    private final Faults faults;

    SimilarityChecks(Knowledge knowledge, Faults faults) {
        this.vocabulary = new Vocabulary(knowledge);
        this.faults = faults;
    }

    void check(Collection<LikenessRule> rules) {
        Map<Field, String> seen = new EnumMap<>(Field.class);
        for (LikenessRule rule : rules) {
            Optional<Field> field = Field.of(rule.field());
            if (field.isEmpty()) {
                fault(
                        rule,
                        "field",
                        "there is no field \"" + rule.field() + "\"" + hint(rule.field(), Field.spellings()));
                continue;
            }
            String other = seen.putIfAbsent(field.get(), rule.id());
            if (other != null) {
                fault(rule, "field", "is compared by " + other + " too");
            }
            if (field.get().compares(rule.comparison().kind())) {
                comparison(rule, field.get());
            } else {
                fault(rule, "kind", "does not fit the values of " + rule.field());
            }
        }
        for (Field field : Field.values()) {
            if (!seen.containsKey(field)) {
                faults.add(FILE + field.word(), "must be compared by an entry");
            }
        }
    }

    private void comparison(LikenessRule rule, Field field) {
        if (rule.comparison() instanceof Comparison.Numeric numeric) {
            numeric(rule, "range", numeric);
        } else if (rule.comparison() instanceof Comparison.Ordinal ordinal) {
            exactly(rule, "steps", ordinal.steps().keySet(), vocabulary.of(field));
        } else if (rule.comparison() instanceof Comparison.Categorical categorical) {
            for (int i = 0; i < categorical.groups().size(); i++) {
                known(rule, "alike[" + i + "]", categorical.groups().get(i).words(), vocabulary.of(field));
            }
        } else if (rule.comparison() instanceof Comparison.Together together) {
            together(rule, together);
        }
    }

    private void together(LikenessRule rule, Comparison.Together together) {
        exactly(rule, "ways", together.ways().keySet(), vocabulary.of(Field.SETTINGS));
        for (Way way : Way.values()) {
            Map<String, Comparison.Numeric> numbers = together.ways().getOrDefault(way.word(), Map.of());
            String key = "ways." + way.word();
            if (together.ways().containsKey(way.word())) {
                exactly(rule, key, numbers.keySet(), way.numbers());
            }
            numbers.forEach((name, numeric) -> numeric(rule, key + "." + name, numeric));
        }
    }

    private void numeric(LikenessRule rule, String key, Comparison.Numeric numeric) {
        if (numeric.range() > WIDEST) {
            fault(rule, key, "must be at most " + (int) WIDEST);
        }
    }

    private void exactly(LikenessRule rule, String key, Collection<String> given, List<String> words) {
        known(rule, key, given, words);
        words.stream()
                .filter(word -> !given.contains(word))
                .forEach(word -> fault(rule, key + "." + word, "must be given"));
    }

    private void known(LikenessRule rule, String key, Collection<String> given, List<String> words) {
        given.stream()
                .filter(word -> !words.contains(word))
                .forEach(word -> fault(rule, key, "\"" + word + "\" is not a known word" + hint(word, words)));
    }

    private static String hint(String word, Collection<String> words) {
        return Nearest.hint(word, words);
    }

    private void fault(LikenessRule rule, String key, String says) {
        faults.add(FILE + rule.id() + "." + key, says);
    }
}
