package org.tunica.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tunica.CaseTree;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.physics.Physics;

/** Sentences that look beyond the option: at other segments of the leg, and at what earlier stages said. */
class RulesAcrossSegmentsTest {
    private static final Physics PHYSICS = new Physics(Texts.KNOWLEDGE);
    private static final String OTHER = "limbs.0.segments.1.";

    /** What a rule with this one condition says of the first of two segments alike. */
    private static String says(String condition, CaseTree tree) {
        String text = Texts.RULE.replace("the depth to the skin is less than limit heat.skin-gap.min", condition);
        return said(Texts.book("rules/2-exclusions/test.rule", text, "EXC-900"), tree, "EXC-900");
    }

    private static String said(RuleBook book, CaseTree tree, String ruleId) {
        CaseFile caseFile = CaseFile.read("test", tree.bytes(), Texts.KNOWLEDGE);
        Limb limb = caseFile.limbs().get(0);
        Segment segment = limb.segments().get(0);
        Considered option = new Considered(
                caseFile,
                limb,
                segment,
                Texts.KNOWLEDGE.technique("laser-1470-radial"),
                PHYSICS.derive(caseFile, segment));
        return book.judge(List.of(book.facts(option))).stream()
                .filter(verdict -> verdict.rule().id().equals(ruleId))
                .map(verdict -> verdict.speaks() ? "speaks" : "is in doubt: " + String.join(", ", verdict.doubt()))
                .findFirst()
                .orElse("stays quiet");
    }

    private static CaseTree twoSegments() {
        return CaseTree.soundLeg().repeatSegment("L2");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "none | stays quiet | speaks",
                "foam | speaks | stays quiet",
                "  | is in doubt: the earlier treatment of another segment | is in doubt: the earlier treatment of another segment",
            })
    void anotherSegmentIsAskedInThreeValues(String earlier, String another, String noOther) {
        CaseTree tree = twoSegments().set(OTHER + "earlierTreatment", earlier);
        assertEquals(another, says("in another segment of this leg the earlier treatment is foam", tree));
        assertEquals(noOther, says("in no other segment of this leg the earlier treatment is foam", tree));
    }

    @Test
    void theSegmentItselfIsNoOther_andALegOfOneHasNone() {
        CaseTree tree = CaseTree.soundLeg().set("limbs.0.segments.0.earlierTreatment", "foam");
        assertEquals("stays quiet", says("in another segment of this leg the earlier treatment is foam", tree));
        assertEquals("speaks", says("in no other segment of this leg the earlier treatment is foam", tree));
    }

    @ParameterizedTest
    @CsvSource({"foam-sts, speaks", "adhesive, stays quiet", ", stays quiet"})
    void aTechniqueChosenElsewhereIsSeen(String chosen, String says) {
        CaseTree tree = twoSegments().set(OTHER + "chosen", chosen);
        assertEquals(says, says("in another segment of this leg the technique chosen works by foam", tree));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3.9 | speaks | stays quiet",
                "4 | stays quiet | speaks",
                "6 | stays quiet | speaks",
                "8 | stays quiet | speaks",
                "8.1 | speaks | stays quiet",
                "  | is in doubt: the depth to the skin | is in doubt: the depth to the skin",
            })
    void notBetweenIsTheRestOfBetween_bothLimitsIncluded(Double depthMm, String outside, String inside) {
        CaseTree tree = CaseTree.soundLeg().set("limbs.0.segments.0.depthToSkinMm", depthMm);
        String limits = "between limit foam.lumen.narrow and limit foam.lumen.wide";
        assertEquals(outside, says("the depth to the skin is not " + limits, tree));
        assertEquals(inside, says("the depth to the skin is " + limits, tree));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "4 | speaks | stays quiet",
                "6 | stays quiet | speaks",
                "  | is in doubt: the depth to the skin | is in doubt: the depth to the skin",
            })
    void aCautionMayAskWhatStageTwoSaid(Double depthMm, String there, String none) {
        CaseTree tree = CaseTree.soundLeg().set("limbs.0.segments.0.depthToSkinMm", depthMm);
        assertEquals(there, afterExclusion("there is a reason to exclude", tree));
        assertEquals(none, afterExclusion("there is no reason to exclude", tree));
    }

    private static String afterExclusion(String condition, CaseTree tree) {
        String caution = """

                rule CAU-900  stage two has spoken
                  source S-0900, unverified   change 0900   review by 2027-11   class caution
                  when %s
                  then caution slightly
                  because a test
                """.formatted(condition);
        RuleBook book = Texts.book(
                Map.of("rules/2-exclusions/test.rule", Texts.RULE, "rules/3-cautions/test.rule", "# A test?" + caution),
                "EXC-900",
                "CAU-900");
        return said(book, tree, "CAU-900");
    }
}
