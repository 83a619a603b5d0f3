package org.tunica.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tunica.knowledge.Bundle;

/** Planted rules: each kind of remark is found, and what only looks like one is not. */
class RemarksTest {
    private static final String NEAR_SKIN =
            "FIN-901 | find near-skin | the depth to the skin is less than limit plant.four";
    private static final String HEAT_OR_GLUE =
            "FIN-902 | find catheter-based | the technique works by heat or adhesive";
    private static final String SMALL = "FIN-903 | find small-lumen | the lumen diameter is less than limit plant.two";

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "the lumen diameter is less than limit plant.two | the lumen diameter is more than limit plant.two; exclude each other",
                "the lumen diameter is less than limit plant.two | the lumen diameter is at least limit plant.two; exclude each other",
                "the lumen diameter is at most limit plant.two | the lumen diameter is more than limit plant.two; exclude each other",
                "the lumen diameter is between limit plant.two and limit plant.four | the lumen diameter is not between limit plant.two and limit plant.six; exclude each other",
                "the lumen diameter is between limit plant.two and limit plant.four | the lumen diameter is more than limit plant.four; exclude each other",
                "the course is straight or winding | the course is very-winding; exclude each other",
                "the course is straight | the course is not straight or winding; exclude each other",
                "the patient is pregnant | the patient is not pregnant; exclude each other",
                "the patient has asthma-uncontrolled | the patient does not have asthma-uncontrolled or thrombophilia-severe; exclude each other",
                "the technique works by foam | the technique is laser-1470-radial; exclude each other",
                "the technique works by foam | the technique needs the gap to the nerve; exclude each other",
                "the technique works by foam | the finding catheter-based holds; exclude each other",
                "the depth to the skin is at least limit plant.four | the finding near-skin holds; exclude each other",
                "the depth to the skin is less than limit plant.four | the finding near-skin does not hold; exclude each other",
                "in another segment of this leg the course is straight | in no other segment of this leg the course is straight or winding; exclude each other",
                "the lumen diameter is more than limit plant.hundred; holds of no option",
            })
    void whatCanNeverBeSaidIsFound(String conditions, String says) {
        String rule = "PRE-901 | prefer slightly | " + conditions;
        assertTrue(only(Remark.Kind.IMPOSSIBLE, rule, NEAR_SKIN, HEAT_OR_GLUE).contains(says));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "the lumen diameter is at most limit plant.two | the lumen diameter is at least limit plant.two",
                "the lumen diameter is between limit plant.two and limit plant.four | the lumen diameter is at least limit plant.four",
                "the lumen diameter is not between limit plant.two and limit plant.six | the lumen diameter is less than limit plant.eight",
                "the course is straight or winding | the course is winding or very-winding",
                "the patient has asthma-uncontrolled or thrombophilia-severe | the patient does not have asthma-uncontrolled",
                "the technique works by heat | the technique is not laser-1470-radial",
                "the depth to the skin is at least limit plant.two | the finding near-skin holds",
                "in another segment of this leg the course is straight | in no other segment of this leg the course is winding",
                "in another segment of this leg the course is straight | in another segment of this leg the course is winding",
            })
    void whatOnlyJustCanBeSaidIsLetPass(String conditions) {
        String rule = "PRE-901 | prefer slightly | " + conditions;
        assertEquals(List.of(), of(Remark.Kind.IMPOSSIBLE, rule, NEAR_SKIN, HEAT_OR_GLUE));
        assertEquals(List.of(), of(Remark.Kind.ALWAYS_TRUE, rule, NEAR_SKIN, HEAT_OR_GLUE));
    }

    @Test
    void aLimitNobodyMayEnterIsFound() {
        String far = "PRE-901 | prefer slightly | the lumen diameter is less than limit plant.hundred";
        assertTrue(only(Remark.Kind.OUT_OF_RANGE, far).contains("which is 100 mm, but only 0.3 to 40 mm"));
        assertTrue(only(Remark.Kind.ALWAYS_TRUE, far).contains("holds of every option"));
        String near = far.replace("hundred", "eight");
        assertEquals(List.of(), of(Remark.Kind.OUT_OF_RANGE, near));
        assertEquals(List.of(), of(Remark.Kind.ALWAYS_TRUE, near));
    }

    @Test
    void theSameRuleInAnotherOrderIsADuplicate() {
        String one = "PRE-901 | prefer slightly | the course is straight or winding | the patient is pregnant";
        String same = "PRE-902 | prefer slightly | the patient is pregnant | the course is winding or straight";
        assertTrue(only(Remark.Kind.DUPLICATE, one, same).contains("PRE-901 and PRE-902"));
        assertEquals(List.of(), of(Remark.Kind.SUBSUMED, one, same));
        assertEquals(List.of(), of(Remark.Kind.DUPLICATE, one, same.replace("slightly", "strongly")));
        assertEquals(List.of(), of(Remark.Kind.DUPLICATE, one, same.replace("is pregnant", "is not pregnant")));
        assertEquals(List.of(), of(Remark.Kind.DUPLICATE, one, same.replace("winding or straight", "straight")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "the lumen diameter is less than limit plant.two; the lumen diameter is less than limit plant.four",
                "the lumen diameter is less than limit plant.two; the lumen diameter is at most limit plant.two",
                "the lumen diameter is between limit plant.four and limit plant.six; the lumen diameter is at least limit plant.four",
                "the lumen diameter is more than limit plant.six; the lumen diameter is not between limit plant.two and limit plant.six",
                "the course is straight; the course is straight or winding",
                "the course is very-winding; the course is not straight",
                "the patient has asthma-uncontrolled; the patient has asthma-uncontrolled or thrombophilia-severe",
                "the patient does not have asthma-uncontrolled or thrombophilia-severe; the patient does not have asthma-uncontrolled",
                "the technique is steam; the technique works by heat",
                "the technique is steam; the finding catheter-based holds",
                "the finding small-lumen holds; the lumen diameter is less than limit plant.four",
                "the lumen diameter is less than limit plant.two | the patient is pregnant; the finding small-lumen holds",
                "in another segment of this leg the course is straight; in another segment of this leg the course is not winding",
                "in no other segment of this leg the course is straight or winding; in no other segment of this leg the course is winding",
            })
    void aRuleInsideAnotherIsFound(String narrow, String wide) {
        String a = "PRE-901 | prefer slightly | " + narrow;
        String b = "PRE-902 | prefer slightly | " + wide;
        String says = only(Remark.Kind.SUBSUMED, a, b, HEAT_OR_GLUE, SMALL);
        assertTrue(says.startsWith("whenever PRE-901 speaks, PRE-902 says \"prefer slightly\" already"), says);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "the lumen diameter is at most limit plant.two; the lumen diameter is less than limit plant.two | the patient is pregnant",
                "the lumen diameter is at least limit plant.four; the lumen diameter is between limit plant.four and limit plant.six | the patient is pregnant",
                "the lumen diameter is at least limit plant.six; the lumen diameter is not between limit plant.two and limit plant.six",
                "the course is straight or winding; the course is winding or very-winding",
                "the technique works by heat; the technique is steam | the patient is pregnant",
                "the patient has asthma-uncontrolled or thrombophilia-severe; the patient has asthma-uncontrolled or migraine-with-aura",
                "the technique is steam; the lumen diameter is less than limit plant.hundred",
                "in another segment of this leg the course is straight; the course is straight",
            })
    void aRuleThatOnlyMeetsAnotherIsLetPass(String one, String other) {
        String a = "PRE-901 | prefer slightly | " + one;
        String b = "PRE-902 | prefer slightly | " + other;
        assertEquals(
                List.of(),
                of(Remark.Kind.SUBSUMED, a, b).stream()
                        .filter(says -> says.startsWith("whenever PRE-901"))
                        .toList());
    }

    @Test
    void aReasonForAndOneAgainstTheSameAreAConflict() {
        String pro = "PRE-901 | prefer slightly | the course is straight";
        String con = "PRE-902 | disfavour strongly | the course is straight or winding";
        assertTrue(only(Remark.Kind.CONFLICT, pro, con).contains("whenever it speaks, PRE-902 says"));
        assertEquals(List.of(), of(Remark.Kind.CONFLICT, pro, con.replace("straight or winding", "winding")));
        String narrower = con.replace(" or winding", " | the patient has asthma-uncontrolled");
        assertEquals(List.of(), of(Remark.Kind.CONFLICT, pro + " | the patient is pregnant", narrower));
    }

    @Test
    void aRangeOfTheSameSettingFillsTheGapToo() {
        String low =
                "SET-901 | set the spacing of lesions to limit plant.two | the lumen diameter is less than limit plant.two";
        String high =
                "SET-902 | set the spacing of lesions to limit plant.six | the lumen diameter is more than limit plant.six";
        String keep = "SET-903 | keep the spacing of lesions between limit plant.two and limit plant.six"
                + " | the lumen diameter is between limit plant.two and limit plant.six";
        assertEquals(List.of(), of(Remark.Kind.GAP, low, high, keep));
        assertEquals(List.of(), of(Remark.Kind.OVERLAP, low, high, keep));
    }

    @Test
    void aRuleThatOnlySpeaksOfWhatIsExcludedSpeaksInVain() {
        String caution = "CAU-901 | caution slightly | the lumen diameter is less than limit plant.two";
        String exclusion = "EXC-901 | exclude | the lumen diameter is less than limit plant.four";
        assertTrue(only(Remark.Kind.IN_VAIN, caution, exclusion).contains("CAU-901 speaks, EXC-901 excludes"));
        assertEquals(List.of(), of(Remark.Kind.IN_VAIN, caution.replace("two", "six"), exclusion));
        String pregnant = exclusion + " | the patient is pregnant";
        String other =
                "EXC-902 | exclude | the patient is not pregnant | the lumen diameter is less than limit plant.four";
        assertEquals(List.of(), of(Remark.Kind.IN_VAIN, caution, pregnant, other));
        String told = caution + " | the patient is pregnant";
        assertTrue(only(Remark.Kind.IN_VAIN, told, pregnant, other).contains("EXC-901 excludes"));
        String open = "EXC-902 | exclude | the lumen diameter is less than limit plant.four | the course is straight";
        String wound = "EXC-903 | exclude | the course is not straight";
        String known = caution + " | the course is straight or winding or very-winding";
        assertTrue(only(Remark.Kind.IN_VAIN, known, open, wound).contains("one rule or another excludes"));
    }

    @Test
    void twoValuesForOneSettingAreAConflict() {
        String a = "SET-901 | set the spacing of lesions to limit plant.two | the course is straight";
        String b = "SET-902 | set the spacing of lesions to limit plant.four | the patient is pregnant";
        assertTrue(only(Remark.Kind.CONFLICT, a, b).contains("both can speak of the same option"));
        assertEquals(
                List.of(), of(Remark.Kind.CONFLICT, a, b.replace("the patient is pregnant", "the course is winding")));
    }

    @Test
    void gapsAndOverlapsHaveExactEnds() {
        String low =
                "SET-901 | set the spacing of lesions to limit plant.two | the technique works by foam | the lumen diameter is less than limit plant.four";
        String high =
                "SET-902 | set the spacing of lesions to limit plant.four | the technique works by foam | the lumen diameter is more than limit plant.four";
        String gap = only(Remark.Kind.GAP, low, high);
        assertTrue(gap.contains("for foam-polidocanol, foam-sts"), gap);
        assertTrue(gap.endsWith("No rule: exactly 4 mm"), gap);
        String closed = high.replace("is more than", "is at least");
        assertEquals(List.of(), of(Remark.Kind.GAP, low, closed));
        assertEquals(List.of(), of(Remark.Kind.OVERLAP, low, closed));
        assertTrue(only(Remark.Kind.RANGES, low, closed)
                .contains("SET-901 from 0.3 mm and below 4 mm; SET-902 from 4 mm up to 40 mm"));
        String overlap = only(Remark.Kind.OVERLAP, low.replace("is less than", "is at most"), closed);
        assertTrue(overlap.endsWith("At once: SET-901 and SET-902 exactly 4 mm"), overlap);
        assertEquals(
                List.of(),
                of(Remark.Kind.OVERLAP, low + " | the patient is pregnant", closed + " | the patient is not pregnant"));
        String other = high.replace("works by foam", "works by heat");
        assertEquals(List.of(), of(Remark.Kind.GAP, low, other));
    }

    @Test
    void aRuleWithoutWidthFillsTheGap() {
        String low =
                "SET-901 | set the spacing of lesions to limit plant.two | the lumen diameter is less than limit plant.two";
        String high =
                "SET-902 | set the spacing of lesions to limit plant.four | the lumen diameter is more than limit plant.six";
        assertEquals(1, of(Remark.Kind.GAP, low, high).size());
        assertEquals(
                List.of(),
                of(
                        Remark.Kind.GAP,
                        low,
                        high,
                        "SET-903 | set the spacing of lesions to limit plant.six | the patient is pregnant"));
    }

    @Test
    void whatHoldsBackNamesItsHazardOnceHazardsAreListed() {
        Bundle bundle = Plant.bundle(
                "EXC-901 | exclude | the patient is pregnant", "PRE-901 | prefer slightly | the patient is pregnant");
        assertEquals(List.of(), hazardless(bundle));
        Map<String, String> texts = new TreeMap<>(bundle.texts());
        texts.put("knowledge/hazards.yaml", "HZ-01: { hazard: a, cause: b, effect: c, held: d, limits: e }\n");
        assertEquals(List.of("EXC-901"), hazardless(Bundle.of(texts)));
        texts.computeIfPresent(
                "rules/2-exclusions/plant.rule",
                (path, text) -> text.replace("class contraindication", "class contraindication   hazard HZ-01"));
        assertEquals(List.of(), hazardless(Bundle.of(texts)));
    }

    private static List<String> hazardless(Bundle bundle) {
        return RuleReview.of(bundle).remarks().stream()
                .filter(remark -> remark.kind() == Remark.Kind.NO_HAZARD)
                .flatMap(remark -> remark.rules().stream())
                .toList();
    }

    @Test
    void aRemarkMayStandWithAReason_aFaultAndNothingMayNot() {
        String wide = "PRE-901 | prefer slightly | the course is straight";
        String narrow = "PRE-902 | prefer slightly | the course is straight | the technique works by heat";
        assertTrue(judged("says nothing new", "PRE-902, PRE-901", wide, narrow)
                .endsWith("; accepted because it is meant"));
        assertTrue(judged("conflict", "PRE-901, PRE-902", wide, narrow).contains("accepts nothing: ACC-01"));
        assertTrue(judged("says nothing new", "PRE-901", wide, narrow).contains("accepts nothing: ACC-01"));
        String twice = wide.replace("901", "902");
        assertTrue(judged("stands twice", "PRE-901, PRE-902", wide, twice).contains("accepts nothing: ACC-01"));
    }

    /** The remarks on some rules one of whose remarks is let stand, as they are printed. */
    private static String judged(String remark, String ids, String... rules) {
        Map<String, String> texts = new TreeMap<>(Plant.bundle(rules).texts());
        texts.put(
                "knowledge/accepted.yaml",
                "ACC-01: { remark: " + remark + ", rules: [" + ids + "], why: it is meant }\n");
        return RuleReview.of(Bundle.of(texts)).remarks().stream()
                .map(Remark::toString)
                .filter(said -> said.contains("accept"))
                .collect(Collectors.joining("\n"));
    }

    @Test
    void theShippedRulesHoldNoFault_andNoRemarkWaits() {
        List<Remark> remarks = RuleReview.of(Bundle.shipped()).remarks();
        assertEquals(List.of(), remarks.stream().filter(Remark::fault).toList());
        assertEquals(List.of(), remarks.stream().filter(Remark::open).toList());
        assertTrue(remarks.stream().anyMatch(remark -> remark.kind() == Remark.Kind.RANGES));
    }

    private static String only(Remark.Kind kind, String... rules) {
        List<String> found = of(kind, rules);
        assertEquals(1, found.size(), String.join("\n", found));
        return found.get(0);
    }

    private static List<String> of(Remark.Kind kind, String... rules) {
        return Plant.review(rules).remarks().stream()
                .filter(remark -> remark.kind() == kind)
                .map(Remark::sentence)
                .collect(Collectors.toList());
    }
}
