package org.tunica.office;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.tunica.Tunica;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Bundle;
import org.tunica.review.RuleReview;
import org.tunica.rules.Rule;
import org.tunica.workroom.RuleEdit;

/** A rule laid out as a form and read back. */
class RuleFormTest {
    private static final RuleReview SHIPPED = Tunica.shipped().review();

    @Test
    void aFormNobodyTypedInto_givesEveryRuleBackAsItWas() {
        for (Rule rule : SHIPPED.rules()) {
            RuleEdit edit = new RuleEdit(rule, SHIPPED.knowledge());
            assertEquals(rule, edit.as(RuleFormView.standing(edit), rule.change()));
        }
    }

    @Test
    void everyFile_withItsRulesWrittenAnew_saysTheSame() {
        Map<String, String> texts = new TreeMap<>(Bundle.shipped().texts());
        // from the last rule of a file to the first, so that the lines of the others stay where they are
        List<Rule> rules = SHIPPED.rules();
        for (int i = rules.size() - 1; i >= 0; i--) {
            RuleEdit edit = new RuleEdit(rules.get(i), SHIPPED.knowledge());
            texts.put(edit.path(), edit.in(texts, rules.get(i)));
        }
        Map<String, String> before = said(rules);
        assertEquals(before, said(RuleReview.of(Bundle.of(texts)).rules()));
    }

    private static Map<String, String> said(List<Rule> rules) {
        return rules.stream().collect(Collectors.toMap(Rule::id, Rule::text, (one, other) -> one, TreeMap::new));
    }

    @Test
    void everythingThatCannotBeTaken_isToldAtOnce() {
        Rule rule = SHIPPED.rules().stream()
                .filter(one -> one.id().equals("EXC-007"))
                .findFirst()
                .orElseThrow();
        RuleEdit edit = new RuleEdit(rule, SHIPPED.knowledge());
        Map<String, List<String>> fields = new HashMap<>();
        fields.put("0.words", List.of());
        fields.put("1.limit", List.of("element.long.length.none"));
        fields.put("sources", List.of("S-9999"));
        fields.put("standing", List.of("certain"));
        fields.put("reviewBy", List.of("soon"));
        FaultyInput refused =
                assertThrows(FaultyInput.class, () -> edit.as(field -> fields.getOrDefault(field, List.of()), "0099"));
        String says = refused.getMessage();
        for (String place : List.of("condition 1", "condition 2", "S-9999", "standing", "reviewBy", "because")) {
            assertTrue(says.contains(place), says);
        }
    }
}
