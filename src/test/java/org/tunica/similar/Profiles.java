package org.tunica.similar;

import java.util.Random;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Knowledge;

/** Profiles drawn at random: invented, of nobody. */
final class Profiles {
    static final Knowledge KNOWLEDGE = Knowledge.of(Bundle.shipped());
    static final Vocabulary VOCABULARY = new Vocabulary(KNOWLEDGE);
    static final Similarity SIMILARITY = new Similarity(KNOWLEDGE);

    private static final double[] WIDEST = {1.2, 15, 30, 40};
    private static final double[] WIDEST_SETTING = {20, 12};

    private final Random random;
    private final double missing;

    /** @param missing share of values left out; vein and level are always known */
    Profiles(long seed, double missing) {
        this.random = new Random(seed);
        this.missing = missing;
    }

    Profile next() {
        Profile.Builder profile = new Profile.Builder();
        for (Field field : Field.values()) {
            boolean always = field == Field.VEIN || field == Field.LEVEL;
            if (always || random.nextDouble() >= missing) {
                set(profile, field);
            }
        }
        return profile.build();
    }

    private void set(Profile.Builder profile, Field field) {
        if (field.numeric()) {
            // measured to a twentieth of the unit or a hundredth for walls, so that ties happen
            double step = field == Field.RELAXED_WALL ? 0.01 : 0.5;
            profile.number(field, Math.rint(WIDEST[field.ordinal()] * random.nextDouble() / step) * step);
            return;
        }
        int word = random.nextInt(VOCABULARY.of(field).size());
        profile.set(field.column(), word);
        if (field == Field.SETTINGS) {
            for (int i = 0; i < Way.values()[word].numbers().size(); i++) {
                profile.set(
                        Field.settingColumn(i),
                        Profile.thousandths(Math.rint(WIDEST_SETTING[i] * random.nextDouble())));
            }
        }
    }
}
