package org.tunica.similar;

import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.casefile.Word;
import org.tunica.physics.Physics;
import org.tunica.physics.SegmentNumbers;
import org.tunica.treatment.DeliveredSegment;

/** Takes from a case what is compared: wall and lumen relaxed as the models take them, the rest as recorded. */
final class Profiler {
    private final Physics physics;
    private final Vocabulary vocabulary;

    Profiler(Physics physics, Vocabulary vocabulary) {
        this.physics = physics;
        this.vocabulary = vocabulary;
    }

    /** A segment before its treatment; its technique is the one a person chose, if any. */
    Profile planned(CaseFile caseFile, Limb limb, Segment segment) {
        Profile.Builder profile = scanned(caseFile, limb, segment);
        segment.chosen().ifPresent(technique -> word(profile, Field.TECHNIQUE, technique));
        return profile.build();
    }

    /** A segment that was treated. */
    Profile treated(CaseFile caseFile, Limb limb, Segment segment, DeliveredSegment delivered) {
        Profile.Builder profile = scanned(caseFile, limb, segment);
        delivered.technique().ifPresent(technique -> word(profile, Field.TECHNIQUE, technique));
        word(profile, Field.POSITION, delivered.position());
        for (Way way : Way.values()) {
            Optional<double[]> numbers = way.of(delivered);
            if (numbers.isPresent()) {
                settings(profile, way, numbers.get());
                break;
            }
        }
        return profile.build();
    }

    private static void settings(Profile.Builder profile, Way way, double[] numbers) {
        profile.set(Field.SETTINGS.column(), way.ordinal());
        for (int i = 0; i < numbers.length; i++) {
            profile.set(Field.settingColumn(i), Profile.thousandths(numbers[i]));
        }
    }

    private Profile.Builder scanned(CaseFile caseFile, Limb limb, Segment segment) {
        SegmentNumbers numbers = physics.segment(caseFile, segment);
        Profile.Builder profile = new Profile.Builder();
        number(profile, Field.RELAXED_WALL, numbers.relaxedWallMm());
        number(profile, Field.RELAXED_LUMEN, numbers.relaxedLumenMm());
        number(profile, Field.NERVE_GAP, segment.nerve().gapMm());
        number(profile, Field.DEPTH_TO_SKIN, segment.depthToSkinMm());
        word(profile, Field.VEIN, Optional.of(segment.vein()));
        word(profile, Field.LEVEL, Optional.of(segment.level()));
        word(profile, Field.COURSE, segment.course());
        word(profile, Field.CEAP_CLASS, limb.ceapClass());
        word(profile, Field.ANTICOAGULATION, caseFile.patient().anticoagulation());
        word(profile, Field.EARLIER_TREATMENT, segment.earlierTreatment());
        return profile;
    }

    private static void number(Profile.Builder profile, Field field, OptionalDouble number) {
        number.ifPresent(known -> profile.number(field, known));
    }

    private void word(Profile.Builder profile, Field field, Optional<? extends Word> word) {
        word.ifPresent(known -> word(profile, field, known.word()));
    }

    private void word(Profile.Builder profile, Field field, String word) {
        profile.set(field.column(), vocabulary.place(field, word));
    }
}
