package org.tunica.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.tunica.CaseTree;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.physics.Derived;

/**
 * The engine against a second reading of the rules that shares no code with it: three-valued logic by nested loops, over
 * the demo cases and hundreds of variants with values blanked at random.
 */
class EngineAgainstHandTest {
    private static final Tunica TUNICA = Tunica.shipped();

    @Test
    void engineAndHandAgreeOnDemoCasesAndBlankedVariants() {
        Random random = new Random(1);
        Set<String> spoken = new HashSet<>();
        Set<String> doubted = new HashSet<>();
        for (var file : CaseTree.demoFiles()) {
            CaseTree tree = CaseTree.demo(file.getFileName().toString().replace(".json", ""));
            for (int variant = 0; variant < 12; variant++) {
                List<OptionFacts> facts = facts(variant == 0 ? tree : blanked(tree, random));
                List<Verdict> verdicts = TUNICA.rules().judge(facts);
                assertEquals(byHand(facts), said(verdicts), file + " variant " + variant);
                verdicts.forEach(verdict ->
                        (verdict.speaks() ? spoken : doubted).add(verdict.rule().id()));
            }
        }
        assertTrue(spoken.size() > 40 && doubted.size() > 40, spoken.size() + " and " + doubted.size());
    }

    @Test
    void theOrderOfOptionsDoesNotMatter() {
        List<OptionFacts> facts = new ArrayList<>(facts(CaseTree.demo("both-legs-many-segments")));
        List<Verdict> expected = TUNICA.rules().judge(facts);
        assertFalse(expected.isEmpty());
        for (int seed = 0; seed < 20; seed++) {
            Collections.shuffle(facts, new Random(seed));
            assertEquals(expected, TUNICA.rules().judge(facts));
        }
    }

    /** Sessions are used again; what a run that broke off left in one must not speak in the next. */
    @Test
    void aRunThatBreaksOffLeavesNothingBehind() {
        List<OptionFacts> sound = facts(CaseTree.soundLeg());
        List<Verdict> expected = TUNICA.rules().judge(sound);
        List<OptionFacts> broken = new ArrayList<>(facts(CaseTree.demo("pregnancy")));
        broken.add(OptionFacts.of(broken.get(broken.size() / 2).key(), Map.of(), List.of()));
        for (int run = 0; run < 5; run++) {
            assertThrows(RuntimeException.class, () -> TUNICA.rules().judge(broken));
            assertEquals(expected, TUNICA.rules().judge(sound));
        }
    }

    @Test
    void everyVerdictHasRuleSourceAndChangeRecord() {
        TUNICA.rules().judge(facts(CaseTree.soundLeg())).forEach(verdict -> {
            assertTrue(TUNICA.knowledge()
                    .sources()
                    .keySet()
                    .containsAll(verdict.rule().sources()));
            assertFalse(verdict.rule().sources().isEmpty());
            assertTrue(TUNICA.knowledge()
                    .changes()
                    .get(verdict.rule().change())
                    .rules()
                    .contains(verdict.rule().id()));
        });
    }

    private static CaseTree blanked(CaseTree tree, Random random) {
        CaseTree copy = tree.copy();
        List<String> paths = new ArrayList<>(copy.blankable());
        Collections.shuffle(paths, random);
        paths.stream().limit(1 + random.nextInt(6)).forEach(path -> copy.set(path, null));
        return copy;
    }

    private static List<OptionFacts> facts(CaseTree tree) {
        CaseFile caseFile = TUNICA.readCase("case", tree.bytes());
        List<OptionFacts> facts = new ArrayList<>();
        for (Limb limb : caseFile.limbs()) {
            for (Segment segment : limb.segments()) {
                Derived derived = TUNICA.physics().derive(caseFile, segment);
                TUNICA.knowledge()
                        .techniques()
                        .values()
                        .forEach(technique -> facts.add(
                                TUNICA.rules().facts(new Considered(caseFile, limb, segment, technique, derived))));
            }
        }
        return facts;
    }

    private static Set<String> said(List<Verdict> verdicts) {
        Set<String> said = new TreeSet<>();
        verdicts.forEach(
                verdict -> said.add(verdict.option() + " " + verdict.rule().id() + (verdict.speaks() ? "" : "?")));
        return said;
    }

    private static Set<String> byHand(List<OptionFacts> options) {
        Set<String> said = new TreeSet<>();
        for (OptionFacts option : options) {
            Map<String, Truth> findings = new HashMap<>();
            for (int stage = 1; stage <= 5; stage++) {
                for (Rule rule : TUNICA.rules().rules()) {
                    if (rule.conclusion().kind().stage() == stage) {
                        judge(rule, option, findings, said);
                    }
                }
            }
        }
        return said;
    }

    private static void judge(Rule rule, OptionFacts option, Map<String, Truth> findings, Set<String> said) {
        Truth all = Truth.TRUE;
        for (Condition condition : rule.conditions()) {
            Truth one = condition instanceof Condition.OnVerdicts earlier
                    ? earlier.wanted()
                            ? findings.getOrDefault(earlier.fact(), Truth.FALSE)
                            : findings.getOrDefault(earlier.fact(), Truth.FALSE).not()
                    : ((Condition.OnOption) condition).truth(option);
            all = worse(all, one);
        }
        if (all == Truth.FALSE) {
            return;
        }
        said.add(option.key() + " " + rule.id() + (all == Truth.TRUE ? "" : "?"));
        String fact = rule.conclusion() instanceof Conclusion.Find find
                ? find.finding()
                : Condition.Earlier.factOf(rule.conclusion().kind());
        if (findings.getOrDefault(fact, Truth.FALSE) != Truth.TRUE) {
            findings.put(fact, all);
        }
    }

    private static Truth worse(Truth a, Truth b) {
        if (a == Truth.FALSE || b == Truth.FALSE) {
            return Truth.FALSE;
        }
        return a == Truth.UNKNOWN || b == Truth.UNKNOWN ? Truth.UNKNOWN : Truth.TRUE;
    }
}
