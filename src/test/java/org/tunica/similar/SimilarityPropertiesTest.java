package org.tunica.similar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class SimilarityPropertiesTest {
    private static final Similarity SIMILARITY = Profiles.SIMILARITY;

    @Property(tries = 300, seed = "1", edgeCases = EdgeCasesMode.NONE)
    void withItself_isOne(@ForAll long seed) {
        Profile one = new Profiles(seed, 0.3).next();
        assertEquals(1, SIMILARITY.score(one, one), 1e-12);
    }

    @Property(tries = 500, seed = "2", edgeCases = EdgeCasesMode.NONE)
    void bothWaysRound_isTheSameAndWithinNoughtToOne(@ForAll long seed) {
        Profiles profiles = new Profiles(seed, 0.3);
        Profile a = profiles.next();
        Profile b = profiles.next();
        double similarity = SIMILARITY.score(a, b);
        assertEquals(similarity, SIMILARITY.score(b, a));
        assertEquals(SIMILARITY.of(a, b).knownShare(), SIMILARITY.of(b, a).knownShare());
        assertTrue(similarity >= 0 && similarity <= 1, () -> "similarity " + similarity);
    }

    @Property(tries = 600, seed = "3", edgeCases = EdgeCasesMode.NONE)
    void fartherInOneNumber_isNeverMoreAlike(
            @ForAll long seed,
            @ForAll @IntRange(min = 0, max = 3) int field,
            @ForAll @DoubleRange(min = 0, max = 20) double near,
            @ForAll @DoubleRange(min = 0, max = 20) double farther) {
        Profiles profiles = new Profiles(seed, 0.3);
        Profile here = profiles.next();
        Profile there = profiles.next();
        double at = 20;
        double close = SIMILARITY.score(with(here, field, at), with(there, field, at + near));
        double far = SIMILARITY.score(with(here, field, at), with(there, field, at + near + farther));
        assertTrue(far <= close, () -> far + " is more than " + close);
    }

    @Property(tries = 500, seed = "4", edgeCases = EdgeCasesMode.NONE)
    void explanation_saysWhatTheScoreSays(@ForAll long seed) {
        Profiles profiles = new Profiles(seed, 0.4);
        Profile a = profiles.next();
        Profile b = profiles.next();
        Likeness likeness = SIMILARITY.of(a, b);
        assertEquals(SIMILARITY.score(a, b), likeness.similarity());
        assertEquals(
                likeness.similarity(),
                likeness.contributions().stream()
                        .mapToDouble(Likeness.Contribution::points)
                        .sum(),
                1e-12);
        assertEquals(
                Field.values().length,
                likeness.contributions().size() + likeness.notCompared().size());
    }

    private static Profile with(Profile profile, int field, double value) {
        Profile.Builder changed = new Profile.Builder();
        for (int column = 0; column < Field.COLUMNS; column++) {
            changed.set(column, profile.at(column));
        }
        return changed.number(Field.values()[field], value).build();
    }
}
