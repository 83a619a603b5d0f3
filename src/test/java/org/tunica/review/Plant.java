package org.tunica.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tunica.knowledge.Bundle;
import org.tunica.rules.Texts;

/**
 * A rule set planted for a test, one rule a line: {@code EXC-901 | exclude | condition | condition}. Limits {@code
 * plant.two}, {@code plant.four}, {@code plant.six}, {@code plant.eight} and {@code plant.hundred} are millimetres and mean
 * nothing.
 */
final class Plant {
    private static final Map<String, String> FOLDERS = Map.of(
            "FIN", "1-findings finding",
            "EXC", "2-exclusions contraindication",
            "NEE", "2-exclusions data-quality",
            "ROM", "2-exclusions logistics",
            "CAU", "3-cautions caution",
            "PRE", "4-preferences preference",
            "SET", "5-settings setting",
            "MEE", "6-meeting meeting");
    private static final Map<String, Integer> LIMITS =
            Map.of("plant.two", 2, "plant.four", 4, "plant.six", 6, "plant.eight", 8, "plant.hundred", 100);

    private Plant() {}

    static RuleReview review(String... rules) {
        return RuleReview.of(bundle(rules));
    }

    static Bundle bundle(String... rules) {
        Map<String, String> files = new TreeMap<>();
        List<String> ids = new ArrayList<>();
        for (String rule : rules) {
            String[] parts = rule.strip().split(" *\\| *");
            String[] home = FOLDERS.get(parts[0].substring(0, 3)).split(" ");
            ids.add(parts[0]);
            files.merge(
                    "rules/" + home[0] + "/plant.rule",
                    "# A plant\n" + text(parts, home[1]),
                    (all, more) -> all + more.substring(more.indexOf('\n') + 1));
        }
        files.put("knowledge/limits/plant.yaml", limits());
        Bundle bundle = Texts.bundle(files, ids.toArray(String[]::new));
        Map<String, String> texts = new TreeMap<>(bundle.texts());
        texts.computeIfPresent(
                "rules/changes/0900-test.yaml", (path, text) -> text.replace("limits: []", "limits: [plant.*]"));
        return Bundle.of(texts);
    }

    private static String text(String[] parts, String ruleClass) {
        StringBuilder text = new StringBuilder("\nrule " + parts[0] + "  a planted rule\n"
                + "  source S-0900, unverified   change 0900   review by 2027-11   class " + ruleClass + "\n");
        for (int i = 2; i < parts.length; i++) {
            text.append(i == 2 ? "  when " : "  and  ").append(parts[i]).append('\n');
        }
        return text.append("  then ")
                .append(parts[1])
                .append("\n  because it was planted\n")
                .toString();
    }

    private static String limits() {
        StringBuilder text = new StringBuilder();
        LIMITS.forEach(
                (id, value) -> text.append(id)
                        .append(":\n  says: a planted limit\n  value: ")
                        .append(value)
                        .append(
                                "\n  unit: mm\n  source: S-0900\n  status: unverified\n  since: 2026-01-01\n  change: \"0900\"\n"));
        return text.toString();
    }
}
