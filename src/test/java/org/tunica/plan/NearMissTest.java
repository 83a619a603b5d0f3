package org.tunica.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tunica.CaseTree;
import org.tunica.Tunica;

/** A near miss is true: the number moved over the limit in the case itself, the technique stands as was foretold. */
class NearMissTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final String SEGMENT = "limbs.0.segments.0.";

    private static SegmentAdvice advice(CaseTree tree) {
        return TUNICA.advise(TUNICA.readCase("test", tree.bytes())).segments().get(0);
    }

    private static OptionStanding standing(SegmentAdvice segment, String technique) {
        return segment.options().stream()
                .filter(option -> option.technique().equals(technique))
                .findFirst()
                .orElseThrow()
                .standing();
    }

    /** The first that speaks of the depth to the skin. */
    private static NearMissAdvice ofTheSkin(SegmentAdvice segment) {
        return segment.nearMisses().stream()
                .filter(miss -> miss.wouldNeed().startsWith("the depth to the skin"))
                .findFirst()
                .orElseThrow(() -> new AssertionError(segment.nearMisses().toString()));
    }

    @Test
    void aSkinAlmostTooNear_isToldWithTheValueRecorded_andMovedOverTheLimitItIsSo() {
        CaseTree tree = CaseTree.soundLeg().set(SEGMENT + "depthToSkinMm", 5.2);
        NearMissAdvice miss = ofTheSkin(advice(tree));
        assertEquals("the depth to the skin under 5 mm (recorded 5.2 mm)", miss.wouldNeed());
        assertEquals(OptionStanding.EXCLUDED, miss.to());
        assertEquals(0.04, miss.awayShare(), 1e-12);
        SegmentAdvice nearer = advice(tree.copy().set(SEGMENT + "depthToSkinMm", 4.99));
        miss.techniques().forEach(id -> assertEquals(miss.to(), standing(nearer, id), id));
    }

    @Test
    void anExclusionByAHairSaysWhatWouldLiftIt() {
        CaseTree tree = CaseTree.soundLeg().set(SEGMENT + "depthToSkinMm", 4.9);
        NearMissAdvice miss = ofTheSkin(advice(tree));
        assertEquals("the depth to the skin at or over 5 mm (recorded 4.9 mm)", miss.wouldNeed());
        assertEquals(OptionStanding.EXCLUDED, miss.from());
        SegmentAdvice further = advice(tree.copy().set(SEGMENT + "depthToSkinMm", 5.0));
        miss.techniques().forEach(id -> assertEquals(miss.to(), standing(further, id), id));
    }

    @Test
    void aNumberOnTheLimitIsTheNearestOfAll() {
        SegmentAdvice segment = advice(CaseTree.soundLeg().set(SEGMENT + "depthToSkinMm", 5.0));
        NearMissAdvice miss = ofTheSkin(segment);
        assertEquals(0, miss.awayShare());
        assertEquals("the depth to the skin under 5 mm (recorded 5 mm)", miss.wouldNeed());
    }

    @Test
    void farFromEveryLimitNothingIsTold() {
        CaseTree tree = CaseTree.soundLeg().set(SEGMENT + "depthToSkinMm", 30);
        assertTrue(advice(tree).nearMisses().stream()
                .noneMatch(miss -> miss.wouldNeed().contains("depth to the skin")));
    }

    @Test
    void measurementsMovedOverTheLimitInTheCase_giveTheStandingForetold() {
        Set<String> tried = new HashSet<>();
        List<String> wrong = new ArrayList<>();
        for (String field : List.of("depthToSkinMm", "nerve.gapMm", "straightCm", "topToDeepJunctionCm")) {
            for (double value : new double[] {1.05, 1.9, 2.1, 2.9, 3.1, 4.8, 5.2, 9.5, 10.5, 24, 26}) {
                CaseTree tree = CaseTree.soundLeg().set(SEGMENT + field, value);
                for (NearMissAdvice miss : advice(tree).nearMisses()) {
                    if (miss.wouldNeed().startsWith(noun(field))) {
                        tried.add(miss.rule());
                        moved(tree, field, miss, wrong);
                    }
                }
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(tried.size() >= 4, tried.toString());
    }

    private static String noun(String field) {
        return switch (field) {
            case "depthToSkinMm" -> "the depth to the skin";
            case "nerve.gapMm" -> "the gap to the nerve";
            case "straightCm" -> "the straight length";
            default -> "the distance to the deep junction";
        };
    }

    private static void moved(CaseTree tree, String field, NearMissAdvice miss, List<String> wrong) {
        double limit = TUNICA.knowledge().value(miss.limit());
        double to = miss.wouldNeed().contains(" at or ")
                ? limit
                : miss.wouldNeed().contains(" under ") ? Math.nextDown(limit) : Math.nextUp(limit);
        SegmentAdvice after = advice(tree.copy().set(SEGMENT + field, to));
        miss.techniques().stream()
                .filter(id -> standing(after, id) != miss.to())
                .forEach(id -> wrong.add(miss + " but " + id + " " + standing(after, id)));
    }
}
