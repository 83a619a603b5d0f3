package org.tunica.mutation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tunica.mutation.Replay.End;
import org.tunica.mutation.Replay.Outcome;

/** The table of a mutation run: every mutant, how it ended and by what. */
record MutationReport(List<Outcome> outcomes, Map<String, String> equivalent) {

    /** Survivors that no reason excuses. */
    List<String> unexcused() {
        return names(End.SURVIVES).stream()
                .filter(name -> !equivalent.containsKey(name))
                .toList();
    }

    /** Excuses for mutants that are noticed after all, or are no longer made. */
    List<String> idleExcuses() {
        List<String> survivors = names(End.SURVIVES);
        return equivalent.keySet().stream()
                .filter(name -> !survivors.contains(name))
                .sorted()
                .toList();
    }

    String summary() {
        int noticed = names(End.NOTICED).size();
        int unexcused = unexcused().size();
        return String.format(
                "%d mutants: %d noticed, %d refused at the start, %d equivalent, %d survive; score %.1f %%",
                outcomes.size(),
                noticed,
                names(End.REFUSED).size(),
                names(End.SURVIVES).size() - unexcused,
                unexcused,
                100.0 * noticed / (noticed + unexcused));
    }

    void write(Path file, Set<String> withoutDemoCase) {
        StringBuilder text = new StringBuilder(summary() + "\n");
        text.append("Rules that speak in no demo case: ")
                .append(String.join(", ", withoutDemoCase))
                .append("\n\n| mutant | end | by |\n|---|---|---|\n");
        for (Outcome outcome : outcomes) {
            String name = outcome.mutant().name();
            String by = outcome.end() == End.SURVIVES ? equivalent.getOrDefault(name, "nothing") : outcome.by();
            text.append("| " + name + " | " + outcome.end() + " | " + by + " |\n");
        }
        try {
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private List<String> names(End end) {
        return outcomes.stream()
                .filter(outcome -> outcome.end() == end)
                .map(outcome -> outcome.mutant().name())
                .toList();
    }
}
