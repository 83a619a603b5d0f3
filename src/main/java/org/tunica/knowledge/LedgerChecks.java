package org.tunica.knowledge;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.tunica.casefile.Faults;
import org.tunica.casefile.Nearest;

/** Checks the ledger of evidence and conflicts against the rest of knowledge/. Rules it names are checked with the rules. */
final class LedgerChecks {
    private static final Pattern EVIDENCE_ID = Pattern.compile("[A-G]\\d?-\\d{2}");
    private static final Pattern CONFLICT_ID = Pattern.compile("CON-\\d{2}");

    private final Knowledge knowledge;
    private final Map<String, String> files;
    private final Faults faults;

    LedgerChecks(Knowledge knowledge, Map<String, String> files, Faults faults) {
        this.knowledge = knowledge;
        this.files = files;
        this.faults = faults;
    }

    void check() {
        Set<String> numbers = numbers();
        knowledge.evidence().values().forEach(evidence -> evidence(evidence, numbers));
        knowledge.conflicts().values().forEach(this::conflict);
    }

    /** Every number a row may name: quantities, and what a technique brings as {@code <technique>.<key>}. */
    private Set<String> numbers() {
        Set<String> numbers = new TreeSet<>(knowledge.quantities().keySet());
        knowledge.techniques().values().forEach(technique -> {
            technique.quantities().keySet().forEach(key -> numbers.add(technique.id() + "." + key));
            technique.settings().keySet().forEach(key -> numbers.add(technique.id() + "." + key));
        });
        return numbers;
    }

    private void evidence(Evidence evidence, Set<String> numbers) {
        String place = place(evidence.id());
        form(evidence.id(), EVIDENCE_ID, "section and row, such as D-24 or A1-07");
        if (evidence.sources().isEmpty()) {
            faults.add(place + ".sources", "at least one source must be named");
        }
        evidence.sources()
                .forEach(id -> known(place + ".sources", id, knowledge.sources().keySet(), "source"));
        evidence.limits().forEach(id -> known(place + ".limits", id, numbers, "number"));
    }

    private void conflict(Conflict conflict) {
        String place = place(conflict.id());
        form(conflict.id(), CONFLICT_ID, "CON- and two digits");
        Set<String> taken = new TreeSet<>();
        conflict.steps().forEach(step -> step.at().ifPresent(taken::add));
        conflict.values()
                .forEach(id ->
                        known(place + ".values", id, knowledge.quantities().keySet(), "quantity"));
        taken.stream()
                .filter(id -> !conflict.values().contains(id))
                .forEach(id -> faults.add(
                        place + ".steps", id + " is none of the values" + Nearest.hint(id, conflict.values())));
        conflict.values().stream()
                .filter(id -> !conflict.steps().isEmpty() && !taken.contains(id))
                .forEach(id -> faults.add(place + ".values", id + " is passed over: no step takes it"));
    }

    private void form(String id, Pattern pattern, String expected) {
        if (!pattern.matcher(id).matches()) {
            faults.add(place(id), "must be called by " + expected);
        }
    }

    private void known(String place, String id, Set<String> ids, String what) {
        if (!ids.contains(id)) {
            faults.add(place, "there is no " + what + " \"" + id + "\"" + Nearest.hint(id, ids));
        }
    }

    private String place(String id) {
        return files.get(id) + ": " + id;
    }
}
