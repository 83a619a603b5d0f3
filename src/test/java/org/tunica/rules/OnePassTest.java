package org.tunica.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.GlossaryField;
import org.tunica.plan.Planner;

/** One pass of plain Java finds what the rule engine finds. */
class OnePassTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final RuleBook BOOK = TUNICA.rules();
    private static final int MADE_UP = 400;
    private static final int CASES = 40;

    @Test
    void agreesWithTheEngineWhateverTheFacts() {
        Random random = new Random(9);
        int spoken = 0;
        for (int i = 0; i < MADE_UP; i++) {
            List<OptionFacts> facts = List.of(madeUp(random, "a"), madeUp(random, "b"));
            List<Verdict> byEngine = BOOK.judge(facts);
            assertEquals(byEngine, BOOK.judgeInOnePass(facts));
            spoken += byEngine.size();
        }
        assertTrue(spoken > 10 * MADE_UP, "hardly a rule spoke: " + spoken);
    }

    /** Any answer a field can have, or none; no rule of the shipped ones can tell such a leg from a real one. */
    private static OptionFacts madeUp(Random random, String technique) {
        Map<GlossaryField, Answer> answers = new HashMap<>();
        for (GlossaryField field : TUNICA.knowledge().glossary().fields().values()) {
            List<Answer> possible = BOOK.possibleAnswers(field);
            boolean unknown = possible.isEmpty() || random.nextInt(6) == 0;
            answers.put(field, unknown ? Answer.UNKNOWN : possible.get(random.nextInt(possible.size())));
        }
        return OptionFacts.of(new OptionKey("L1", technique), answers, List.of());
    }

    @Test
    void agreesWithTheEngineOnCasesAndSharesTheirFacts() {
        Planner planner = new Planner(TUNICA.knowledge(), TUNICA.physics(), BOOK);
        for (int i = 0; i < CASES; i++) {
            CaseFile caseFile = TUNICA.pastCases().inventedLibrary(3).at(i).caseFile();
            for (Limb limb : caseFile.limbs()) {
                for (Segment segment : limb.segments()) {
                    agrees(planner.considered(
                            caseFile, limb, segment, TUNICA.physics().deriveWithoutHeat(caseFile, segment)));
                }
            }
        }
    }

    private static void agrees(List<Considered> options) {
        List<OptionFacts> one = new ArrayList<>();
        options.forEach(option -> one.add(BOOK.facts(option)));
        List<OptionFacts> together = BOOK.facts(options);
        for (int i = 0; i < one.size(); i++) {
            assertEquals(one.get(i).key(), together.get(i).key());
            for (GlossaryField field : TUNICA.knowledge().glossary().fields().values()) {
                assertEquals(one.get(i).answer(field), together.get(i).answer(field), field.id());
            }
        }
        assertEquals(BOOK.judge(one), BOOK.judgeInOnePass(together));
    }
}
