package org.tunica.review;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.tunica.knowledge.Conflict;
import org.tunica.knowledge.Evidence;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;

/** Where sources disagree, and what became of each row of the evidence. */
final class EvidenceTables {
    /** In the order of the methods. */
    static final List<String> HEADINGS = List.of("Where sources disagree", "What became of the evidence");

    private final Knowledge knowledge;

    EvidenceTables(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    void conflicts(Markdown page) {
        page.heading(2, HEADINGS.get(0));
        page.paragraph(
                "Each value stays in sight: the more careful one warns, counts or is set; where the choice ends is "
                        + "said with its reason. What is not settled says so.");
        page.table(
                List.of("id", "question", "values", "what the rules do", "why"),
                knowledge.conflicts().values().stream().map(this::row).toList());
    }

    private List<Ink> row(Conflict conflict) {
        return List.of(
                Ink.text(conflict.id()),
                Ink.text(conflict.question()),
                Ink.text(conflict.values().stream().map(this::value).collect(Collectors.joining("; "))),
                Ink.text(conflict.steps().stream().map(EvidenceTables::step).collect(Collectors.joining("; "))),
                Ink.text(conflict.why()
                        + conflict.left().map(left -> " Not settled: " + left).orElse("")));
    }

    private String value(String id) {
        Quantity quantity = knowledge.quantity(id);
        return Figures.with(quantity.value(), quantity.unit()) + " ("
                + quantity.provenance().source() + ", "
                + quantity.provenance().standing().word() + ")";
    }

    /** What rules do at one value, for example "EXC-030 bars at dose.tumescent.stop". */
    static String step(Conflict.Step step) {
        return String.join(", ", step.rules()) + " " + step.does().word()
                + step.at().map(at -> " at " + at).orElse("");
    }

    void ledger(Markdown page) {
        page.heading(2, HEADINGS.get(1));
        long left = knowledge.evidence().values().stream()
                .filter(evidence -> evidence.left().isPresent())
                .count();
        page.paragraph(knowledge.evidence().size() + " rows of evidence, of which " + left
                + " are carried by no rule and no number; each says why. The tag is that of the weakest part.");
        page.table(
                List.of("row", "evidence", "tag and sources", "carried by"),
                knowledge.evidence().values().stream()
                        .map(evidence -> Markdown.cells(
                                evidence.id(),
                                evidence.says(),
                                evidence.tag().word() + "; " + String.join(", ", evidence.sources()),
                                carried(evidence)))
                        .toList());
    }

    private static String carried(Evidence evidence) {
        List<String> by = new ArrayList<>(evidence.rules());
        by.addAll(evidence.limits());
        return evidence.left().map(left -> "nothing: " + left).orElse(String.join(", ", by));
    }
}
