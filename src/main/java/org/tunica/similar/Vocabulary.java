package org.tunica.similar;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Patient;
import org.tunica.casefile.Segment;
import org.tunica.casefile.Word;
import org.tunica.knowledge.Knowledge;
import org.tunica.session.Position;

/** The words each field may hold, by place. Immutable. */
final class Vocabulary {
    private final Map<Field, List<String>> words = new EnumMap<>(Field.class);

    /** The words of a release: techniques come from knowledge/, all others are closed lists. */
    Vocabulary(Knowledge knowledge) {
        put(Field.VEIN, Segment.Vein.values());
        put(Field.LEVEL, Segment.Level.values());
        put(Field.COURSE, Segment.Course.values());
        put(Field.CEAP_CLASS, Limb.CeapClass.values());
        put(Field.ANTICOAGULATION, Patient.Anticoagulation.values());
        put(Field.EARLIER_TREATMENT, Segment.EarlierTreatment.values());
        put(Field.POSITION, Position.values());
        put(Field.SETTINGS, Way.values());
        words.put(Field.TECHNIQUE, List.copyOf(knowledge.techniqueIds()));
    }

    private void put(Field field, Word... constants) {
        words.put(field, Arrays.stream(constants).map(Word::word).toList());
    }

    /** The words of a field; none when it holds numbers. */
    List<String> of(Field field) {
        return words.getOrDefault(field, List.of());
    }

    /** The place of a word, or {@link Profile#UNKNOWN} for one that is not of this release. */
    int place(Field field, String word) {
        int place = of(field).indexOf(word);
        return place < 0 ? Profile.UNKNOWN : place;
    }
}
