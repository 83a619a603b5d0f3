package org.tunica.similar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tunica.knowledge.Comparison;
import org.tunica.knowledge.LikenessRule;
import org.tunica.knowledge.Provenance;
import org.tunica.knowledge.Standing;

class SimilarityTest {
    /** Diameter on a range of 12 mm, a second number on a range of 4, one word; weights 0.5, 0.3, 0.2. */
    private static final Similarity THREE = strict(0);

    private static Similarity strict(double leastAnsweredShare) {
        return new Similarity(
                List.of(
                        rule("relaxedLumenMm", 0.5, new Comparison.Numeric(12, 1, Double.POSITIVE_INFINITY, "mm")),
                        rule("depthToSkinMm", 0.3, new Comparison.Numeric(4, 1, Double.POSITIVE_INFINITY, "mm")),
                        rule("vein", 0.2, new Comparison.Categorical(List.of(), 0))),
                Profiles.VOCABULARY,
                0.5,
                leastAnsweredShare);
    }

    /** Worked by hand, no source: (0.5 * (1 - 2/12) + 0.3 * (1 - 1/4) + 0.2 * 1) / 1 = 0.84167. */
    @Test
    void meanOfLocalSimilarities_isTheOneWorkedByHand() {
        Likeness likeness = THREE.of(
                three(8).number(Field.DEPTH_TO_SKIN, 2).build(),
                three(6).number(Field.DEPTH_TO_SKIN, 3).build());
        assertEquals(0.8417, likeness.similarity(), 5e-5);
        assertEquals(1, likeness.knownShare(), 1e-12);
    }

    /** Worked by hand, no source: without the second number (0.5 * 0.83333 + 0.2) / 0.7 = 0.88095. */
    @Test
    void missing_isNeitherAlikeNorUnlike() {
        Likeness likeness = THREE.of(three(8).number(Field.DEPTH_TO_SKIN, 2).build(), three(6).build());
        assertEquals(0.8810, likeness.similarity(), 5e-5);
        assertEquals(0.7, likeness.knownShare(), 1e-12);
        assertEquals(
                List.of(new Likeness.NotCompared("depthToSkinMm", 0.3, "not recorded there")), likeness.notCompared());
    }

    @Test
    void contributions_tellBothValuesAndSumUp() {
        Likeness likeness = THREE.of(three(8).build(), three(6.25).build());
        assertEquals("8 mm", likeness.contributions().get(0).here());
        assertEquals("6.25 mm", likeness.contributions().get(0).there());
        assertEquals("great saphenous", likeness.contributions().get(1).here());
        assertEquals(
                likeness.similarity(),
                likeness.contributions().stream()
                        .mapToDouble(Likeness.Contribution::points)
                        .sum(),
                1e-12);
    }

    @Test
    void oneAgreeingValueAlone_isTooLittle() {
        Profile vein = new Profile.Builder().set(Field.VEIN.column(), 0).build();
        assertEquals(1, THREE.score(vein, vein));
        assertTrue(THREE.tooLittleKnown(vein, vein));
        assertFalse(THREE.tooLittleKnown(three(8).build(), three(6).build()));
    }

    @Test
    void exactlyTheLeastShare_isEnough() {
        Profile lumen = new Profile.Builder().number(Field.RELAXED_LUMEN, 7).build();
        assertFalse(THREE.tooLittleKnown(lumen, lumen));
    }

    @Test
    void segmentThatLacksWhatWasAsked_isTooLittleWhateverElseAgrees() {
        Profile full = three(8).number(Field.DEPTH_TO_SKIN, 2).build();
        assertTrue(
                strict(0.75).tooLittleKnown(full, three(8).build()), "the depth, 0.3 of the weight, is missing there");
        assertFalse(strict(0.7).tooLittleKnown(full, three(8).build()), "exactly the share");
        assertFalse(strict(0.75).tooLittleKnown(three(8).build(), full), "what was not asked need not be answered");
    }

    @Test
    void settings_areComparedTogetherAndOfOneWayOnly() {
        Similarity shipped = Profiles.SIMILARITY;
        Profile eightSeconds = heat(10, 8);
        double power = alike(shipped, eightSeconds, heat(8, 8));
        double pullback = alike(shipped, eightSeconds, heat(10, 10));
        assertEquals(power * pullback, alike(shipped, eightSeconds, heat(8, 10)), 1e-12);
        // 10 W at 8 s/cm and 8 W at 10 s/cm give 80 J/cm both, and are not the same setting
        assertTrue(alike(shipped, eightSeconds, heat(8, 10)) < 0.8);
        Profile foam = new Profile.Builder()
                .set(Field.SETTINGS.column(), Way.SCLEROSANT_STRENGTH.ordinal())
                .set(Field.settingColumn(0), 3000)
                .build();
        assertEquals(
                "settings of another kind",
                shipped.of(eightSeconds, foam)
                        .notCompared()
                        .get(shipped.of(eightSeconds, foam).notCompared().size() - 1)
                        .why());
    }

    private static double alike(Similarity similarity, Profile a, Profile b) {
        return similarity.of(a, b).contributions().get(0).alike();
    }

    private static Profile heat(double powerW, double secondsPerCm) {
        return new Profile.Builder()
                .set(Field.SETTINGS.column(), Way.POWER_AND_PULLBACK.ordinal())
                .set(Field.settingColumn(0), Profile.thousandths(powerW))
                .set(Field.settingColumn(1), Profile.thousandths(secondsPerCm))
                .build();
    }

    private static Profile.Builder three(double lumenMm) {
        return new Profile.Builder().number(Field.RELAXED_LUMEN, lumenMm).set(Field.VEIN.column(), 0);
    }

    private static LikenessRule rule(String field, double weight, Comparison comparison) {
        Provenance nowhere = new Provenance("S-0901", Standing.LOCAL, LocalDate.EPOCH, "0060", Optional.empty());
        return new LikenessRule("similar." + field, field, field, weight, comparison, nowhere);
    }
}
