package org.tunica.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Standing;

/** The closed sentences: what fits is read as what it says, what does not is refused with its place. */
class RuleLanguageTest {
    @Test
    void aRuleIsReadIntoATree() {
        Rule rule = Texts.book("rules/2-exclusions/test.rule", Texts.RULE, "EXC-900")
                .rules()
                .get(0);
        assertEquals("EXC-900", rule.id());
        assertEquals("heat needs a gap to the skin", rule.title());
        assertEquals(List.of("S-0900"), rule.sources());
        assertEquals(Standing.UNVERIFIED, rule.standing());
        assertEquals("2027-11", rule.reviewBy().toString());
        assertEquals(
                List.of("the technique works by heat", "the depth to the skin is less than limit heat.skin-gap.min"),
                rule.conditions().stream().map(Condition::sentence).toList());
        assertEquals("exclude", rule.conclusion().sentence());
        assertEquals("the skin over the vein would be warmed past its limit", rule.because());
        assertEquals(Set.of("heat.skin-gap.min"), rule.limitIds());
        assertEquals("rules/2-exclusions/test.rule:2", rule.place());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "the depth to the skn is less than limit heat.skin-gap.min | :5 | the depth to the skin is less than limit",
                "the depth to the skin is under limit heat.skin-gap.min | :5 | is less than",
                "the depth to the skin is less than 5 mm | :5 | numbers stand in knowledge/limits",
                "the depth to the skin is less than limit heat.skin-gap.mim | :5 | did you mean \"heat.skin-gap.min\"",
                "the length is less than limit heat.skin-gap.min | :5 | is in mm but is compared with a number in cm",
                "the vein is great-saphenus | :5 | did you mean \"great-saphenous\"",
                "the finding near-nerv holds | :5 | did you mean \"near-nerve\"",
                "the patient has migrain-with-aura | :5 | did you mean \"migraine-with-aura\"",
                "the vein is tributary or tributary | :5 | stands twice",
                "the patient is pregnant and breast feeding | :5 | no form fits",
                "the vein is not recorded | :5 | always recorded",
                "the depth to the skin is between limit heat.skin-gap.min | :5 | between limit <id> and limit <id>",
                "the depth to the skin is not between limit heat.skin-gap.min | :5 | between limit <id> and limit <id>",
                "in another segment of this leg the age is at least limit heat.skin-gap.min | :5 | is in mm but",
                "in another segment of this leg the patient is pregnant | :5 | of another segment a rule may ask only",
                "in another segment of this leg the technique works by heat | :5 | of another segment a rule may ask only",
                "in another segment of this leg the wall thickness is not recorded | :5 | a rule may ask only",
                "in no other segment of this leg the vein is tributry | :5 | did you mean \"tributary\"",
                "there is a need to measure first | :5 | there is no reason to exclude",
                "there is a reason to exclude | :2 | not settled yet",
            })
    void aWrongConditionIsRefusedWithPlaceAndHelp(String condition, String line, String help) {
        String faults = Texts.faults(
                Texts.RULE.replace("the depth to the skin is less than limit heat.skin-gap.min", condition));
        assertTrue(faults.contains("rules/2-exclusions/test.rule" + line), faults);
        assertTrue(faults.contains(help), faults);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "then exclude | then exclud | :6 | no conclusion fits",
                "then exclude | then caution | :6 | no conclusion fits",
                "then exclude | then caution strongly | :2 | belongs into rules/3-cautions",
                "then exclude | then find near-nerve | :2 | belongs into rules/1-findings",
                "class contraindication | class caution | :2 | must be of class contraindication",
                "change 0900 | change 0901 | :2 | there is no change record 0901",
                "S-0900 | S-0999 | :2 | there is no source S-0999",
                ", unverified | , certain | :3 | is not a standing",
                "2027-11 | 2027-13 | :3 | is not a month",
                "2027-11 | 9999-12 | :3 | is not a month",
                "source S-0900, | source S-0900 S-0900, | :3 | S-0900 stands twice",
                "review by 2027-11 | by 2027-11 | :3 | expected \"source",
                "rule EXC-900  heat | rule EXC-900 heat | :2 | two blanks after the id",
                "the skin over | the 5 mm over | :2 | numbers stand in knowledge/limits",
                "heat needs a gap | heat needs 5 mm of gap | :2 | numbers stand in knowledge/limits",
                "and  the depth | or   the depth | :5 | out of order or unknown",
                "because the | says the | :7 | out of order or unknown",
            })
    void aWrongFormIsRefusedWithPlaceAndHelp(String right, String wrong, String line, String help) {
        String faults = Texts.faults(Texts.RULE.replaceFirst(right, wrong));
        assertTrue(faults.contains("test.rule" + line), faults);
        assertTrue(faults.contains(help), faults);
    }

    @Test
    void everyFaultOfAFileIsListedAtOnce() {
        String faults = Texts.faults(Texts.RULE
                .replace("works by heat", "works by head")
                .replace("heat.skin-gap.min", "heat.skin.gap")
                .replace("then exclude", "then exlude")
                .replace("unverified", "sure"));
        for (int line : new int[] {3, 4, 5, 6}) {
            assertTrue(faults.contains("test.rule:" + line), faults);
        }
    }

    @Test
    void aRuleMayNotRestAFindingOnAFinding() {
        String text = Texts.RULE
                .replace("EXC-900", "FIN-900")
                .replace("contraindication", "finding")
                .replace("then exclude", "then find near-skin")
                .replace("the technique works by heat", "the finding near-nerve holds");
        assertTrue(faultsIn("rules/1-findings/test.rule", text, "FIN-900").contains("rests a finding on a finding"));
    }

    /** No circle: what a ranking rests on may not ask for it. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "the ranking is not-firm",
                "the best standing is careful",
                "the number of ranked options is at most limit meeting.options.few",
                "the option ranked first works by heat"
            })
    void aRuleBeforeTheRankingMayNotAskForIt(String condition) {
        String faults = Texts.faults(
                Texts.RULE.replace("the depth to the skin is less than limit heat.skin-gap.min", condition));
        assertTrue(faults.contains("known only after the ranking"), faults);
    }

    /** A sign is about a segment, so nothing that differs from option to option may be asked. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "the technique works by heat",
                "the peak at the nerve is more than limit heat.nerve.peak.red",
                "the room has a tilt table",
                "there is a caution",
                "the finding near-nerve holds"
            })
    void aRuleAfterTheRankingAsksNothingOfOneOption(String condition) {
        String text = Texts.RULE
                .replace("EXC-900", "MEE-900")
                .replace("contraindication", "meeting")
                .replace("then exclude", "then bring to the meeting")
                .replace("the technique works by heat", "the ranking is not-firm")
                .replace("the depth to the skin is less than limit heat.skin-gap.min", condition);
        String faults = faultsIn("rules/6-meeting/test.rule", text, "MEE-900");
        assertTrue(faults.contains("not about one option"), faults);
    }

    @Test
    void whatIsUnknownNeverCountsInFavour() {
        String text = Texts.RULE.replace(
                "the depth to the skin is less than limit heat.skin-gap.min", "the depth to the skin is not recorded");
        assertTrue(Texts.faults(text).contains("go together"));
    }

    @Test
    void charactersThatCannotBeSeenOrAreNotAscii_areRefusedWithTheirColumn() {
        for (String bad : List.of("\u202e", "\u0430", "\u00a0", "\u200b", "\t", "\u0007", "\\u000a\u2028")) {
            String faults = Texts.faults(Texts.RULE.replace("needs a gap", "needs" + bad + "a gap"));
            assertTrue(faults.contains("only printable ASCII"), faults);
        }
    }

    @Test
    void aLineTooLong_tooManyConditions_andAnIdTwice_areRefused() {
        assertTrue(Texts.faults(Texts.RULE.replace("past its limit", "x".repeat(400)))
                .contains("longer than 300"));
        String six = Texts.RULE.replace(
                "  then",
                "  and  the vein is tributary\n  and  the level is thigh\n  and  the course is straight\n"
                        + "  and  the sex is female\n  then");
        assertTrue(Texts.faults(six).contains("more than 5 conditions"));
        assertTrue(Texts.faults(Texts.RULE + Texts.RULE.substring(Texts.RULE.indexOf("rule")))
                .contains("EXC-900 stands already at"));
    }

    @Test
    void ruleTextThatLooksLikeCode_isOnlyAWrongSentence() {
        for (String code : List.of(
                "eval(java.lang.Runtime.getRuntime().exec(\"id\"))",
                "the vein is tributary; System.exit(9)",
                "${jndi:ldap://localhost/a}",
                "new ProcessBuilder(\"id\").start()")) {
            String faults = Texts.faults(Texts.RULE.replace("the technique works by heat", code));
            assertTrue(faults.contains("test.rule:4"), faults);
        }
    }

    @Test
    void everyFormOfTheVocabularyIsReadBackAsItsOwnSentence() {
        Sentences sentences = new Sentences(Texts.KNOWLEDGE);
        List<String> forms = sentences.forms();
        assertTrue(forms.size() > 100, "only " + forms.size());
        Set<String> flags = Texts.KNOWLEDGE.glossary().fields().values().stream()
                .map(field -> field.yes())
                .filter(words -> !words.isEmpty())
                .collect(Collectors.toSet());
        assertTrue(forms.containsAll(flags));
        flags.forEach(flag -> assertEquals(flag, read(sentences, flag)));
    }

    private static String read(Sentences sentences, String sentence) {
        try {
            return sentences.condition(sentence).sentence();
        } catch (SentenceFault e) {
            return e.getMessage();
        }
    }

    private static String faultsIn(String path, String text, String id) {
        try {
            Texts.book(path, text, id);
        } catch (FaultyInput e) {
            return e.getMessage();
        }
        throw new AssertionError("accepted");
    }

    @Test
    void everyShippedRule_writtenBack_isReadAsTheSameRule() {
        Faults faults = new Faults();
        RuleParser parser = new RuleParser(Texts.KNOWLEDGE, faults);
        List<Rule> rules = parser.parse(Texts.SHIPPED.under("rules/", ".rule"));
        for (Rule rule : rules) {
            List<Rule> again = parser.parse(new TreeMap<>(Map.of("again.rule", "# Is it the same?\n" + rule.text())));
            assertEquals(rule.text(), again.get(0).text());
            assertEquals(rule.conditions(), again.get(0).conditions());
            assertEquals(rule.because(), again.get(0).because());
            assertTrue(rule.text().lines().allMatch(line -> line.length() <= 200), rule::text);
        }
        assertEquals(List.of(), faults.list());
        assertTrue(rules.size() > 100, "only " + rules.size());
    }

    @Test
    void aRangeThatEndsBelowItsStart_isRefused() {
        String text = Texts.RULE.replace(
                "then exclude",
                "then keep the sclerosant strength between limit foam.strength.strong and limit foam.strength.weak");
        assertTrue(Texts.faults(text)
                .contains("limit foam.strength.strong is above limit foam.strength.weak: nothing lies between"));
    }

    @Test
    void aFileWithoutARule_orWithTooMany_orARuleThatGoesOnForEver_isRefused() {
        assertTrue(
                Texts.faults("# Is there anything?\n#rule EXC-900  nothing\n").contains("holds no rule"));
        String many = Texts.RULE.substring(Texts.RULE.indexOf("rule")).repeat(RuleParser.MOST_RULES_OF_A_FILE + 1);
        assertTrue(Texts.faults("# Is it much?\n" + many).contains("holds more than 500 rules"));
        String lines = "    and on\n".repeat(RuleParser.MOST_LINES_OF_A_RULE);
        assertTrue(Texts.faults(Texts.RULE + lines).contains("test.rule:2: the rule has more than 40 lines"));
    }

    @Test
    void linesThatEndAsOnAnotherSystem_areOneFault_andACharacterIsNamedWhole() {
        String faults =
                Texts.faults(Texts.RULE.replace("\n", "\r\n").replace("then exclude", "then excl\ud83d\ude00ude"));
        assertTrue(faults.contains("test.rule:1: its lines end with carriage return and line feed"), faults);
        assertTrue(faults.contains("test.rule:6: column 12 holds the character U+1F600"), faults);
        assertTrue(faults.contains("rules: 7 faults"), faults);
    }

    @Test
    void aGlossaryFieldOfAnotherKindThanTheProgramAnswers_isRefused() {
        Map<String, String> texts = new TreeMap<>(Texts.SHIPPED.texts());
        texts.computeIfPresent(
                "knowledge/glossary.yaml",
                (path, text) -> text.replace(
                        "patient.ageYears: { kind: number, name: the age, noun: the age, unit: a }",
                        "patient.ageYears: { kind: word, name: the age, noun: the age, values: [young, old] }"));
        Bundle bundle = Bundle.of(texts);
        Knowledge knowledge = Knowledge.of(bundle);
        String faults = assertThrows(FaultyInput.class, () -> RuleBook.of(bundle, knowledge))
                .getMessage();
        assertTrue(faults.contains("fields.patient.ageYears.kind: must be number, is word"), faults);
    }

    @Test
    void aChangeRecordThatListsNoRule_isNamedByItsFile() {
        Map<String, String> texts = new TreeMap<>(Texts.SHIPPED.texts());
        String path = "rules/changes/0002-words-for-veins-and-techniques.yaml";
        texts.computeIfPresent(path, (name, text) -> text.replace("[FIN-001,", "[EXC-999, FIN-001,"));
        Bundle bundle = Bundle.of(texts);
        Knowledge knowledge = Knowledge.of(bundle);
        String faults = assertThrows(FaultyInput.class, () -> RuleBook.of(bundle, knowledge))
                .getMessage();
        assertTrue(faults.contains(path + ": rules: lists EXC-999, which is no rule"), faults);
    }
}
