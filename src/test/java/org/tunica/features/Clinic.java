package org.tunica.features;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tunica.CaseTree;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.plan.Advice;
import org.tunica.plan.OptionAdvice;
import org.tunica.rules.Answer;
import org.tunica.rules.Considered;
import org.tunica.rules.OptionFacts;
import org.tunica.rules.Verdict;

/** The state of one scenario: a case under change, the technique considered, and the engine that answers. */
public final class Clinic {
    static final Tunica TUNICA = Tunica.shipped();

    private CaseTree tree = CaseTree.soundLeg();
    private String technique = "";
    private final Map<String, Answer> foreseen = new TreeMap<>();

    void sees(CaseTree newTree) {
        tree = newTree;
    }

    void foresees(String field, Answer answer) {
        foreseen.put(field, answer);
    }

    CaseTree tree() {
        return tree;
    }

    void considers(String newTechnique) {
        TUNICA.knowledge().technique(newTechnique);
        technique = newTechnique;
    }

    CaseFile caseFile() {
        return TUNICA.readCase("scenario", tree.bytes());
    }

    Advice advice() {
        return TUNICA.advise(caseFile());
    }

    OptionAdvice option() {
        return option(technique);
    }

    OptionAdvice option(String id) {
        return advice().segments().get(0).options().stream()
                .filter(option -> option.technique().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** The verdicts on the technique considered for the first segment. */
    List<Verdict> verdicts() {
        CaseFile caseFile = caseFile();
        Limb limb = caseFile.limbs().get(0);
        Segment segment = limb.segments().get(0);
        Considered considered = new Considered(
                caseFile,
                limb,
                segment,
                TUNICA.knowledge().technique(technique),
                TUNICA.physics().derive(caseFile, segment));
        OptionFacts facts = TUNICA.rules().facts(considered);
        for (Map.Entry<String, Answer> entry : foreseen.entrySet()) {
            facts = facts.with(TUNICA.knowledge().glossary().fields().get(entry.getKey()), entry.getValue());
        }
        return TUNICA.rules().judge(List.of(facts));
    }
}
