package org.tunica.features;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.tunica.CaseTree;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.rules.Answer;
import org.tunica.rules.Considered;
import org.tunica.rules.OptionFacts;
import org.tunica.rules.RuleBook;
import org.tunica.rules.Verdict;

/** A case and the technique considered for its first segment, as one step of a scenario found them. Immutable. */
public final class Scene {
    private final String json;
    private final CaseFile caseFile;
    private final String technique;
    private final OptionFacts facts;

    Scene(Tunica tunica, CaseTree tree, String technique, Map<String, Answer> foreseen) {
        this.json = tree.root().toString();
        this.caseFile = tunica.readCase("scenario", tree.bytes());
        this.technique = technique;
        this.facts = facts(tunica, foreseen);
    }

    private OptionFacts facts(Tunica tunica, Map<String, Answer> foreseen) {
        Limb limb = caseFile.limbs().get(0);
        Segment segment = limb.segments().get(0);
        OptionFacts computed = tunica.rules()
                .facts(new Considered(
                        caseFile,
                        limb,
                        segment,
                        tunica.knowledge().technique(technique),
                        tunica.physics().derive(caseFile, segment)));
        for (Map.Entry<String, Answer> entry : foreseen.entrySet()) {
            computed = computed.with(tunica.knowledge().glossary().fields().get(entry.getKey()), entry.getValue());
        }
        return computed;
    }

    CaseFile caseFile() {
        return caseFile;
    }

    String technique() {
        return technique;
    }

    /** What some rules say about the technique considered. */
    List<Verdict> verdicts(RuleBook rules) {
        List<Verdict> verdicts = new ArrayList<>(rules.judge(List.of(facts)));
        verdicts.addAll(rules.signs(List.of(facts)));
        return verdicts;
    }

    /** The case as JSON, for messages. */
    @Override
    public String toString() {
        return json;
    }
}
