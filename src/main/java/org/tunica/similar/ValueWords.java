package org.tunica.similar;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.tunica.casefile.UcumWords;
import org.tunica.knowledge.Comparison;
import org.tunica.knowledge.LikenessRule;

/** Values of a profile in words, with their units. */
final class ValueWords {
    private static final int PLACES = 3;
    private static final String MISSING = "not recorded";

    private final Vocabulary vocabulary;
    private final Map<Field, LikenessRule> rules;

    ValueWords(Vocabulary vocabulary, Map<Field, LikenessRule> rules) {
        this.vocabulary = vocabulary;
        this.rules = rules;
    }

    /** The value of a field, such as {@code 0.62 mm}. */
    String of(Field field, Profile profile) {
        int value = profile.at(field.column());
        LikenessRule rule = rules.get(field);
        if (value == Profile.UNKNOWN || rule == null) {
            return MISSING;
        }
        if (rule.comparison() instanceof Comparison.Numeric numeric) {
            return number(value, numeric);
        }
        if (rule.comparison() instanceof Comparison.Together together) {
            return settings(together, Way.values()[value], profile);
        }
        String word = vocabulary.of(field).get(value);
        return field == Field.TECHNIQUE ? word : word.replace('-', ' ');
    }

    private static String settings(Comparison.Together rule, Way way, Profile profile) {
        List<Comparison.Numeric> numbers =
                way.numbers().stream().map(rule.ways().get(way.word())::get).toList();
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < numbers.size(); i++) {
            parts.add(number(profile.at(Field.settingColumn(i)), numbers.get(i)));
        }
        return String.join(" with ", parts);
    }

    private static String number(int thousandths, Comparison.Numeric rule) {
        return thousandths == Profile.UNKNOWN
                ? MISSING
                : BigDecimal.valueOf(thousandths, PLACES).stripTrailingZeros().toPlainString()
                        + UcumWords.behind(rule.unit());
    }

    /** Why a field was not compared. */
    String whyNot(Field field, Profile here, Profile there) {
        if (here.knows(field) && there.knows(field)) {
            return "settings of another kind";
        }
        if (here.knows(field)) {
            return MISSING + " there";
        }
        return there.knows(field) ? MISSING + " here" : MISSING + " of either";
    }
}
