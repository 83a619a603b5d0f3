package org.tunica.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tunica.invented.InventedLibrary;
import org.tunica.pastcases.CaseBase;

/**
 * What to replay. The demonstration cases are always among it.
 *
 * @param base past cases
 * @param invented made-up cases
 * @param work where answers of the heat model and finished batches are kept; without it a replay begins anew each time
 * @param threads at least one
 */
public record ReplayRequest(
        Optional<CaseBase> base, Optional<Invented> invented, Optional<WorkFolder> work, int threads) {
    public ReplayRequest {
        if (threads < 1) {
            throw new IllegalArgumentException("threads must be 1 or more, got " + threads);
        }
    }

    /** The first cases of a library of made-up ones. */
    public record Invented(long seed, long count) {}

    List<ReplayedCases> cases(ReleaseSide before, Function<Object, String> toLine) {
        List<ReplayedCases> cases = new ArrayList<>(List.of(new DemoCases()));
        base.ifPresent(known -> cases.add(new BaseCases(known)));
        invented.ifPresent(made -> cases.add(new MadeUpCases(
                new InventedLibrary(before.knowledge(), made.seed()),
                before.name().digest(),
                made.seed(),
                made.count(),
                toLine::apply)));
        return cases;
    }
}
