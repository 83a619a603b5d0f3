package org.tunica.rules;

import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Knowledge;

/** The shipped bundle with one rule file and its change record put in, for tests of the language. */
public final class Texts {
    static final Bundle SHIPPED = Bundle.shipped();
    static final Knowledge KNOWLEDGE = Knowledge.of(SHIPPED);

    static final String RULE = """
            # Is there room between the heat and the skin?
            rule EXC-900  heat needs a gap to the skin
              source S-0900, unverified   change 0900   review by 2027-11   class contraindication
              when the technique works by heat
              and  the depth to the skin is less than limit heat.skin-gap.min
              then exclude
              because the skin over the vein would be warmed past its limit
            """;

    /** Knowledge about the shipped rules, which are not there when one file is tested alone. */
    private static final Pattern SPEAKS_OF_RULES = Pattern.compile("knowledge/(evidence/|conflicts|hazards|accepted)");

    private Texts() {}

    /** The rules of one file alone, under a change record that lists the ids given. */
    static RuleBook book(String path, String text, String... ids) {
        return book(Map.of(path, text), ids);
    }

    /** The rules of some files alone, under a change record that lists the ids given. */
    static RuleBook book(Map<String, String> files, String... ids) {
        Bundle bundle = bundle(files, ids);
        return RuleBook.of(bundle, Knowledge.of(bundle));
    }

    /** The shipped knowledge with the rules of some files alone, under a change record that lists the ids given. */
    public static Bundle bundle(Map<String, String> files, String... ids) {
        Map<String, String> texts = withoutRules();
        texts.put("rules/changes/0900-test.yaml", change(ids));
        texts.putAll(files);
        return Bundle.of(texts);
    }

    /** The shipped knowledge and change records without any rule and without what speaks of rules. */
    static Map<String, String> withoutRules() {
        Map<String, String> texts = new TreeMap<>(SHIPPED.under("knowledge/", ".yaml"));
        texts.keySet().removeIf(name -> SPEAKS_OF_RULES.matcher(name).lookingAt());
        SHIPPED.under("rules/changes/", ".yaml")
                .forEach((name, content) ->
                        texts.put(name, content.replaceAll("(?ms)^rules:.*?^(?=[a-z])", "rules: []\n")));
        return texts;
    }

    /** The faults of a file whose rule is {@code EXC-900} in 2-exclusions. */
    static String faults(String text) {
        try {
            book("rules/2-exclusions/test.rule", text, "EXC-900");
        } catch (FaultyInput e) {
            return e.getMessage();
        }
        throw new AssertionError("accepted:\n" + text);
    }

    private static String change(String... ids) {
        return """
                number: "0900"
                title: a test
                status: draft
                authors: [ { role: rule author, initials: AK } ]
                reviewers: []
                approvers: []
                reason: a test
                sources: [S-0900]
                rules: [%s]
                limits: []
                effective: 2026-01-01
                replaces: []
                """.formatted(String.join(", ", ids));
    }
}
