package org.tunica.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.GlossaryField;
import org.tunica.knowledge.Knowledge;
import org.tunica.rules.Answer;
import org.tunica.rules.AnswerBook;
import org.tunica.rules.OptionFacts;
import org.tunica.rules.OptionKey;
import org.tunica.rules.Rule;
import org.tunica.rules.RuleBook;
import org.tunica.rules.Truth;
import org.tunica.rules.Verdict;

/**
 * Random small rule sets over a small grid of facts: what the search concludes without trying facts is what the engine
 * says when it tries them all.
 */
class ReasoningAgainstEngineTest {
    private static final List<String> CONDITIONS = List.of(
            "the technique works by heat",
            "the technique works by foam or adhesive",
            "the technique does not work by heat or foam",
            "the technique is steam or laser-1470-radial",
            "the technique is not steam",
            "the technique is adhesive or foam-sts",
            "the lumen diameter is less than limit plant.two",
            "the lumen diameter is at most limit plant.two",
            "the lumen diameter is more than limit plant.two",
            "the lumen diameter is at least limit plant.four",
            "the lumen diameter is less than limit plant.four",
            "the lumen diameter is between limit plant.two and limit plant.four",
            "the lumen diameter is not between limit plant.two and limit plant.four",
            "the patient is pregnant",
            "the patient is not pregnant",
            "the patient has asthma-uncontrolled",
            "the patient has asthma-uncontrolled or thrombophilia-severe",
            "the patient does not have asthma-uncontrolled",
            "the patient does not have asthma-uncontrolled or thrombophilia-severe",
            "in another segment of this leg the lumen diameter is less than limit plant.four",
            "in another segment of this leg the lumen diameter is at least limit plant.four",
            "in no other segment of this leg the lumen diameter is less than limit plant.four",
            "in no other segment of this leg the lumen diameter is at least limit plant.four");
    private static final List<String> LATER = List.of(
            "the finding near-skin holds",
            "the finding near-skin does not hold",
            "the finding large-trunk holds",
            "the finding large-trunk does not hold");
    private static final List<String> LAST = List.of("there is a caution", "there is no caution");
    private static final List<OptionFacts> GRID = grid(Knowledge.of(Bundle.shipped()));

    @Test
    void searchAndEnumerationAgree() {
        Random random = new Random(20);
        int impossible = 0;
        int inside = 0;
        for (int base = 0; base < 40; base++) {
            Bundle bundle = Plant.bundle(rules(random));
            Knowledge knowledge = Knowledge.of(bundle);
            RuleBook book = RuleBook.of(bundle, knowledge);
            Reasoning reasoning = new Reasoning(knowledge, book.rules());
            Map<String, Truth[]> said = said(book);
            for (Rule a : book.rules()) {
                assertEquals(
                        speaks(said.get(a.id())),
                        reasoning.canSpeak(a),
                        () -> book.rules().toString());
                impossible += reasoning.canSpeak(a) ? 0 : 1;
                for (Rule b : book.rules()) {
                    Truth[] ofA = said.get(a.id());
                    Truth[] ofB = said.get(b.id());
                    String pair = a.id() + " " + b.id() + "\n" + book.rules();
                    assertEquals(implies(ofA, ofB), reasoning.implies(a, b), pair);
                    assertEquals(together(ofA, ofB), reasoning.canSpeakTogether(a, b), pair);
                    inside += a != b && reasoning.implies(a, b) ? 1 : 0;
                }
            }
        }
        assertTrue(impossible > 20 && inside > 50, impossible + " and " + inside);
    }

    private static String[] rules(Random random) {
        List<String> rules = new ArrayList<>();
        for (String finding : List.of("near-skin", "near-skin", "large-trunk")) {
            rules.add("FIN-90" + rules.size() + " | find " + finding + some(random, 2, List.of(CONDITIONS)));
        }
        for (int i = 0; i < 3; i++) {
            rules.add("CAU-90" + i + " | caution slightly" + some(random, 3, List.of(CONDITIONS, LATER)));
            rules.add("PRE-90" + i + " | prefer slightly" + some(random, 4, List.of(CONDITIONS, LATER, LAST)));
        }
        return rules.toArray(String[]::new);
    }

    private static String some(Random random, int most, List<List<String>> pools) {
        List<String> all = pools.stream().flatMap(List::stream).toList();
        return random.ints(0, all.size())
                .distinct()
                .limit(1 + random.nextInt(most))
                .mapToObj(i -> " | " + all.get(i))
                .collect(Collectors.joining());
    }

    private static Map<String, Truth[]> said(RuleBook book) {
        Map<String, Truth[]> said = new HashMap<>();
        for (Rule rule : book.rules()) {
            Truth[] nothing = new Truth[GRID.size()];
            Arrays.fill(nothing, Truth.FALSE);
            said.put(rule.id(), nothing);
        }
        for (Verdict verdict : book.judge(GRID)) {
            int at = Integer.parseInt(verdict.option().segmentRef());
            said.get(verdict.rule().id())[at] = verdict.speaks() ? Truth.TRUE : Truth.UNKNOWN;
        }
        return said;
    }

    private static boolean speaks(Truth[] said) {
        return Stream.of(said).anyMatch(truth -> truth == Truth.TRUE);
    }

    private static boolean implies(Truth[] a, Truth[] b) {
        for (int i = 0; i < a.length; i++) {
            boolean weaker = a[i] == Truth.TRUE && b[i] != Truth.TRUE || a[i] == Truth.UNKNOWN && b[i] == Truth.FALSE;
            if (weaker) {
                return false;
            }
        }
        return true;
    }

    private static boolean together(Truth[] a, Truth[] b) {
        for (int i = 0; i < a.length; i++) {
            if (a[i] == Truth.TRUE && b[i] == Truth.TRUE) {
                return true;
            }
        }
        return false;
    }

    /** Every value the conditions above can tell apart, and nothing recorded, in every combination. */
    private static List<OptionFacts> grid(Knowledge knowledge) {
        List<Answer> lumens = Stream.of(1.0, 2.0, 3.0, 4.0, 5.0)
                .<Answer>map(Answer.Number::new)
                .toList();
        List<OptionFacts> grid = new ArrayList<>();
        for (String technique : List.of(
                "laser-1470-radial",
                "steam",
                "microwave",
                "foam-sts",
                "foam-polidocanol",
                "adhesive",
                "mechanochemical")) {
            for (Answer lumen : withUnknown(lumens)) {
                for (Answer pregnant : withUnknown(List.of(new Answer.Flag(true), new Answer.Flag(false)))) {
                    for (Answer history : withUnknown(histories())) {
                        for (List<AnswerBook> others : others()) {
                            Map<GlossaryField, Answer> answers = unknown(knowledge);
                            answers.put(field(knowledge, "option.technique"), new Answer.OneWord(technique));
                            answers.put(
                                    field(knowledge, "option.family"),
                                    new Answer.OneWord(knowledge
                                            .technique(technique)
                                            .family()
                                            .word()));
                            answers.put(field(knowledge, "segment.lumenDiameterMm"), lumen);
                            answers.put(field(knowledge, "patient.pregnant"), pregnant);
                            answers.put(field(knowledge, "patient.conditions"), history);
                            grid.add(OptionFacts.of(
                                    new OptionKey(String.valueOf(grid.size()), technique), answers, others));
                        }
                    }
                }
            }
        }
        return grid;
    }

    private static List<Answer> histories() {
        return Stream.of(
                        Set.<String>of(),
                        Set.of("asthma-uncontrolled"),
                        Set.of("thrombophilia-severe"),
                        Set.of("asthma-uncontrolled", "thrombophilia-severe"))
                .<Answer>map(Answer.Words::new)
                .toList();
    }

    private static List<Answer> withUnknown(List<? extends Answer> answers) {
        List<Answer> all = new ArrayList<>(answers);
        all.add(Answer.UNKNOWN);
        return all;
    }

    /** No, one or two other segments: narrow, wide, or not measured. */
    private static List<List<AnswerBook>> others() {
        AnswerBook narrow = new Other(new Answer.Number(3));
        AnswerBook wide = new Other(new Answer.Number(4));
        AnswerBook unknown = new Other(Answer.UNKNOWN);
        return List.of(
                List.of(),
                List.of(narrow),
                List.of(wide),
                List.of(unknown),
                List.of(narrow, wide),
                List.of(narrow, unknown),
                List.of(wide, unknown));
    }

    private static Map<GlossaryField, Answer> unknown(Knowledge knowledge) {
        Map<GlossaryField, Answer> answers = new HashMap<>();
        knowledge.glossary().fields().values().forEach(field -> answers.put(field, Answer.UNKNOWN));
        return answers;
    }

    private static GlossaryField field(Knowledge knowledge, String id) {
        return knowledge.glossary().fields().get(id);
    }

    private record Other(Answer lumen) implements AnswerBook {
        @Override
        public Answer answer(GlossaryField field) {
            return lumen;
        }

        @Override
        public List<AnswerBook> elsewhere() {
            return List.of();
        }
    }
}
