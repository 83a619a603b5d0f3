package org.tunica.similar;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.tunica.knowledge.Comparison;

/** What is compared of two segments. Each field has one column of values, the settings have one and their numbers. */
enum Field {
    RELAXED_WALL("relaxedWallMm", Comparison.Kind.NUMERIC),
    RELAXED_LUMEN("relaxedLumenMm", Comparison.Kind.NUMERIC),
    NERVE_GAP("nerveGapMm", Comparison.Kind.NUMERIC),
    DEPTH_TO_SKIN("depthToSkinMm", Comparison.Kind.NUMERIC),
    VEIN("vein", Comparison.Kind.CATEGORICAL),
    LEVEL("level", Comparison.Kind.ORDINAL),
    COURSE("course", Comparison.Kind.ORDINAL),
    CEAP_CLASS("ceapClass", Comparison.Kind.ORDINAL),
    ANTICOAGULATION("anticoagulation", Comparison.Kind.ORDINAL),
    EARLIER_TREATMENT("earlierTreatment", Comparison.Kind.CATEGORICAL),
    TECHNIQUE("technique", Comparison.Kind.CATEGORICAL),
    POSITION("position", Comparison.Kind.CATEGORICAL),
    SETTINGS("settings", Comparison.Kind.TOGETHER);

    /** How many numbers the settings of one way may have. */
    static final int SETTING_NUMBERS = 2;

    /** Columns of a profile: one for each field, then the numbers of the settings. */
    static final int COLUMNS = values().length + SETTING_NUMBERS;

    private final String word;
    private final Comparison.Kind kind;

    Field(String word, Comparison.Kind kind) {
        this.word = word;
        this.kind = kind;
    }

    /** As knowledge/ spells it. */
    String word() {
        return word;
    }

    /** What its values are. */
    boolean compares(Comparison.Kind how) {
        boolean words = kind == Comparison.Kind.CATEGORICAL || kind == Comparison.Kind.ORDINAL;
        return how == kind || words && (how == Comparison.Kind.CATEGORICAL || how == Comparison.Kind.ORDINAL);
    }

    boolean numeric() {
        return kind == Comparison.Kind.NUMERIC;
    }

    /** Where its value stands in a profile. */
    int column() {
        return ordinal();
    }

    /** Where a number of the settings stands in a profile. */
    static int settingColumn(int number) {
        return values().length + number;
    }

    static Optional<Field> of(String word) {
        return Arrays.stream(values()).filter(field -> field.word.equals(word)).findFirst();
    }

    static List<String> spellings() {
        return Arrays.stream(values()).map(Field::word).toList();
    }
}
