package org.tunica.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Knowledge;

/** What the ledger tells of rules must be true of the rules. */
class EvidenceChecksTest {
    private static final String CONFLICTS = "knowledge/conflicts.yaml";

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    knowledge/evidence/d-contraindications.yaml | rules: [EXC-001] | rules: [EXC-901] | knowledge/evidence: D-01: there is no rule EXC-901; did you mean "EXC-001"?
                    knowledge/conflicts.yaml | rules: [CAU-047] | rules: [CAU-947] | knowledge/conflicts.yaml: CON-01: there is no rule CAU-947; did you mean "CAU-047"?
                    knowledge/conflicts.yaml | does: bars | does: warns | knowledge/conflicts.yaml: CON-01: EXC-030 warns here, but concludes "exclude"
                    knowledge/conflicts.yaml | rules: [CAU-047] | rules: [CAU-048] | knowledge/conflicts.yaml: CON-01: CAU-048 does not name limit dose.tumescent.confirm
                    knowledge/conflicts.yaml | rules: [PRE-025] | rules: [PRE-026] | knowledge/conflicts.yaml: CON-07: PRE-026 does not name limit trunk.large.over
                    rules/2-exclusions/pregnancy.rule | hazard HZ-14 | hazard HZ-94 | rules/2-exclusions/pregnancy.rule:3: there is no hazard HZ-94; did you mean "HZ-04"?
                    knowledge/hazards.yaml | HZ-01: | HZ-98:~  hazard: h~  cause: c~  effect: e~  limits: l~HZ-01: | knowledge/hazards.yaml: HZ-98: no rule controls it and nothing says how it is held
                    """)
    void onePlantedFault_isNamed(String path, String old, String changed, String says) {
        assertEquals(List.of(says), faults(path, old, changed));
    }

    @Test
    void shipped_hasNoFault() {
        assertEquals(List.of(), faults(CONFLICTS, "CON-01:", "CON-01:"));
    }

    private static List<String> faults(String path, String old, String changed) {
        Map<String, String> texts = new TreeMap<>(Texts.SHIPPED.texts());
        String text = texts.get(path);
        int at = text.indexOf(old);
        assertTrue(at >= 0, path + " does not hold " + old);
        texts.put(path, text.substring(0, at) + changed.replace("~", "\n") + text.substring(at + old.length()));
        Bundle bundle = Bundle.of(texts);
        Knowledge knowledge = Knowledge.of(bundle);
        try {
            RuleBook.of(bundle, knowledge);
            return List.of();
        } catch (FaultyInput e) {
            return e.faults().stream().map(Fault::toString).toList();
        }
    }
}
