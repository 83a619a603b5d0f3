package org.tunica.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tunica.knowledge.Bundle;

/** Every kind of change of rules and knowledge is told, and what is no change is not. */
class DifferenceTest {
    private static final String RULE =
            "EXC-901 | exclude | the technique works by heat | the depth to the skin is less than limit plant.four";
    private static final Bundle OLD = Plant.bundle(RULE);
    private static final RuleReview BEFORE = RuleReview.of(OLD);

    @Test
    void theSameRulesInOtherFilesAndOrderDifferInNothing() {
        assertEquals(List.of(), BEFORE.since(BEFORE));
        Map<String, String> moved = new TreeMap<>(OLD.texts());
        moved.put("rules/2-exclusions/elsewhere.rule", moved.remove("rules/2-exclusions/plant.rule"));
        moved.put("knowledge/limits/elsewhere.yaml", moved.remove("knowledge/limits/plant.yaml"));
        moved.put("knowledge/sources-more.yaml", moved.remove("knowledge/sources.yaml"));
        List<Difference> found = RuleReview.of(Bundle.of(moved)).since(BEFORE);
        assertEquals(List.of(), found);
        assertEquals("Nothing differs in what the rules and the knowledge say.\n", Difference.text(found));
    }

    @Test
    void anotherOrderOfConditionsIsNoDifference() {
        String turned =
                "EXC-901 | exclude | the depth to the skin is less than limit plant.four | the technique works by heat";
        assertEquals(List.of(), Plant.review(turned).since(BEFORE));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "rules/2-exclusions/plant.rule|works by heat|works by foam|rule EXC-901 changed: a planted rule#  condition: was the technique works by heat, is the technique works by foam",
                "rules/2-exclusions/plant.rule|a planted rule|another sentence|sentence: was a planted rule, is another sentence",
                "rules/2-exclusions/plant.rule|it was planted|of something else|reason: was it was planted, is of something else",
                "rules/2-exclusions/plant.rule|S-0900,|S-0901,|source: was S-0900, is S-0901",
                "rules/2-exclusions/plant.rule|S-0900,|S-0900 S-0901,|source: new, S-0901",
                "rules/2-exclusions/plant.rule|unverified   change|local   change|standing: was unverified, is local",
                "rules/2-exclusions/plant.rule|2027-11|2028-01|review by: was 2027-11, is 2028-01",
                "rules/2-exclusions/plant.rule|'  and  the depth to the skin is less than limit plant.four'|#|condition: no longer the depth to the skin is less than limit plant.four",
                "knowledge/limits/plant.yaml|value: 4|value: 4.5|number plant.four changed: a planted limit (S-0900, unverified; named by EXC-901)#  value: was 4 mm, is 4.5 mm",
                "knowledge/limits/plant.yaml|value: 6|value: 6 LINE   low: 5|range: new, from 5 mm",
                "knowledge/doses.yaml|source: S-0012|source: S-0015|source: was S-0012, is S-0015",
                "knowledge/weights.yaml|status: local|status: consensus|standing: was local, is consensus",
                "knowledge/techniques/laser-1470-radial.yaml|high: 12|high: 13|technique laser-1470-radial changed: 1470 nm laser, radial fibre#  setting powerW range: was 6 to 12 W, is 6 to 13 W",
                "knowledge/techniques/laser-1470-radial.yaml|value: 10|value: 11|tumescentMlPerCm value: was 10 mL/cm, is 11 mL/cm",
                "knowledge/techniques/laser-1470-radial.yaml|  - patient.weightKg||need: no longer patient.weightKg",
                "knowledge/measurements.yaml|max: 120|max: 110|measurement patient.ageYears changed: age#  range: was 0 to 120 years, is 0 to 110 years",
                "knowledge/sources.yaml|read: secondary|read: abstract|read: was secondary, is abstract",
                "knowledge/glossary.yaml|name: the age|name: the years of age|field patient.ageYears changed: the age#  name: was the age, is the years of age",
                "knowledge/glossary.yaml|near-skin: the skin is close|near-skin: the skin is very close|finding near-skin changed",
                "knowledge/glossary.yaml|name: the power, unit|name: the wattage, unit|setting powerW changed: the wattage#  name: was the power, is the wattage",
                "rules/changes/0900-test.yaml|status: draft|status: in-review|change record 0900 changed: a test#  status: was draft, is in-review",
            })
    void everyKindOfChangeIsTold(String file, String from, String to, String told) {
        Map<String, String> texts = new TreeMap<>(OLD.texts());
        String text = texts.get(file);
        assertTrue(text.contains(from), file + " holds no " + from);
        String into = (to == null ? "" : to).replace(" LINE ", "\n");
        texts.put(file, text.replaceFirst(Pattern.quote(from), into));
        String found = Difference.text(RuleReview.of(Bundle.of(texts)).since(BEFORE));
        assertTrue(found.contains(told.replace("#", "\n")), found);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "rules/2-exclusions/heat-near-skin.rule|hazard HZ-03|hazard HZ-03 HZ-04|rule EXC-007 changed: heat needs a gap to the skin#  hazard: new, HZ-04",
                "knowledge/hazards.yaml|hazard: the skin is burnt|hazard: the skin is scalded|hazard HZ-03 changed: the skin is scalded#  hazard: was the skin is burnt, is the skin is scalded",
                "knowledge/intended-use.yaml|- telangiectasia and reticular veins||intended use purpose changed",
                "knowledge/conflicts.yaml|question: how much lidocaine|question: how many grams of lidocaine|conflict CON-01 changed",
                "knowledge/evidence/a-guidelines.yaml|tag: secondary|tag: read|known by: was secondary, is read",
                "knowledge/accepted.yaml|rules: [PRE-009, PRE-023]|rules: [PRE-010, PRE-023]|accepted remark ACC-02 changed: PRE-010 and PRE-023#  rule: was PRE-009, is PRE-010",
                "knowledge/after-care.yaml|no surveillance|some surveillance|after care clot.class.i changed",
                "knowledge/plain/figures.yaml|percent: 1.27|percent: 1.3|patient figure figure.heat.great.clot-in-deep-vein changed",
                "knowledge/plain/ways.yaml|The glue stays in|It stays in|patient way glue changed",
                "knowledge/plain/sheet.yaml|New bad veins|Bad veins|patient sentence sheet.veins-again changed",
                "knowledge/work-order.yaml|once the trunk is shut|once it is shut|work principle trunk-first changed",
            })
    void whatTheProgramIsForAndWhatItRestsOnIsComparedToo(String file, String from, String to, String told) {
        Bundle shipped = Bundle.shipped();
        Map<String, String> texts = new TreeMap<>(shipped.texts());
        texts.computeIfPresent(file, (path, text) -> text.replaceFirst(Pattern.quote(from), to == null ? "#" : to));
        String found = Difference.text(RuleReview.of(Bundle.of(texts)).since(RuleReview.of(shipped)));
        assertTrue(found.contains(told.replace("#", "\n")), found);
    }

    @Test
    void whatCameAndWhatWentIsTold() {
        RuleReview after = Plant.review(RULE.replace("EXC-901", "EXC-902"));
        String text = Difference.text(after.since(BEFORE));
        assertTrue(text.startsWith("rule EXC-901 removed: a planted rule\nrule EXC-902 added: a planted rule\n"), text);
        assertTrue(text.contains("rule: was EXC-901, is EXC-902"), text);
        List<Difference> all = RuleReview.of(Bundle.shipped()).since(BEFORE);
        assertTrue(all.stream()
                .anyMatch(one -> one.part() == Difference.Part.NUMBER && one.act() == Difference.Act.REMOVED));
        assertTrue(all.stream()
                .anyMatch(one -> one.part() == Difference.Part.CHANGE_RECORD && one.act() == Difference.Act.CHANGED));
    }
}
