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
 * @param base past cases of a case base
 * @param kept past cases kept elsewhere
 * @param invented made-up cases
 * @param work where answers of the heat model and finished batches are kept; without it a replay begins anew each time
 * @param shared where other programs work at the same replay; its finished batches are then kept there and not in {@code work}
 * @param threads at least one
 */
public record ReplayRequest(
        Optional<CaseBase> base,
        Optional<PastLines> kept,
        Optional<Invented> invented,
        Optional<WorkFolder> work,
        Optional<SharedParts> shared,
        int threads) {
    public ReplayRequest {
        if (threads < 1) {
            throw new IllegalArgumentException("threads must be 1 or more, got " + threads);
        }
    }

    /** One that this program works at alone. */
    public ReplayRequest(Optional<CaseBase> base, Optional<Invented> invented, Optional<WorkFolder> work, int threads) {
        this(base, Optional.empty(), invented, work, Optional.empty(), threads);
    }

    /** The first cases of a library of made-up ones. */
    public record Invented(long seed, long count) {}

    /** Where finished batches of a replay wait. */
    BatchStore batches(String replay, Function<Object, String> toLine) {
        return shared.<BatchStore>map(parts -> new SharedBatches(replay, parts, toLine::apply))
                .or(() -> work.map(folder -> folder.batches(replay, toLine::apply)))
                .orElse(BatchStore.NONE);
    }

    List<ReplayedCases> cases(ReleaseSide before, Function<Object, String> toLine) {
        List<ReplayedCases> cases = new ArrayList<>(List.of(new DemoCases()));
        base.ifPresent(known -> cases.add(new BaseCases("the released past cases of a case base", known::eachLine)));
        kept.ifPresent(lines -> cases.add(new BaseCases("the released past cases of a store", lines)));
        invented.ifPresent(made -> cases.add(new MadeUpCases(
                new InventedLibrary(before.knowledge(), made.seed()),
                before.name().digest(),
                made.seed(),
                made.count(),
                toLine::apply)));
        return cases;
    }
}
