package org.tunica.replay;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tunica.Replays;
import org.tunica.Tunica;
import org.tunica.pastcases.CaseBase;
import org.tunica.pastcases.CaseProgress;
import org.tunica.releases.Program;
import org.tunica.store.Engine;
import org.tunica.store.Store;
import org.tunica.workroom.StoreParts;

/**
 * Prints how long a replay takes one program with two threads, and two programs with one thread each that share its parts by
 * way of a PostgreSQL on this machine; both must come to the same bytes. Answers of the heat model are borrowed as for {@link
 * ReplayTable}. Arguments: a folder for all that (made and kept), the numbers of cases.
 */
public final class SplitReplayTable {
    private static final int PROGRAMS = 2;

    private final Path folder;
    private final String place;

    private SplitReplayTable(Path folder, String place) {
        this.folder = folder;
        this.place = place;
    }

    public static void main(String[] args) throws Exception {
        List<String> counts =
                args.length > 1 ? List.of(args).subList(1, args.length) : List.of("1000", "10000", "100000", "1000000");
        rows(Path.of(args[0]), counts, draft -> true);
    }

    /** Prints the table for some of the drafts of {@link ReplayTable}. */
    public static void rows(Path folder, List<String> counts, Predicate<String> drafts) throws Exception {
        Files.createDirectories(folder);
        SplitReplayTable table = new SplitReplayTable(folder, Engine.POSTGRESQL.freshPlace(folder));
        System.out.println("cases    draft                           whole s   split s  split/whole");
        for (String count : counts) {
            table.rows(count, drafts);
        }
    }

    private void rows(String count, Predicate<String> drafts) throws Exception {
        Tunica shipped = Tunica.shipped();
        CaseBase base = ReplayTable.base(shipped, folder.resolve("base-" + count), Long.parseLong(count));
        List<Path> heat = IntStream.range(0, PROGRAMS)
                .mapToObj(program -> folder.resolve("heat-" + count + "-" + program))
                .toList();
        try (WorkFolder work = WorkFolder.of(heat.get(0))) {
            ReplayTable.lend(shipped, work.heat(shipped.physics()), base);
        }
        BorrowedHeat.passMuster(heat.get(0), shipped.physics());
        for (Path other : heat.subList(1, PROGRAMS)) {
            Files.createDirectories(other);
            Path lent = BorrowedHeat.heatFile(heat.get(0));
            Files.copy(lent, other.resolve(lent.getFileName()), StandardCopyOption.REPLACE_EXISTING);
        }
        Map<String, Tunica> timed = ReplayTable.drafts();
        timed.keySet().removeIf(drafts.negate());
        for (Map.Entry<String, Tunica> draft : timed.entrySet()) {
            Replays replays = shipped.against(draft.getValue());
            heat.forEach(SplitReplayTable::forgetParts);
            long began = System.nanoTime();
            String whole = whole(replays, base, heat.get(0));
            double wholeS = (System.nanoTime() - began) / 1e9;
            began = System.nanoTime();
            List<String> split = split(replays, base, heat);
            double splitS = (System.nanoTime() - began) / 1e9;
            if (!split.equals(List.of(whole, whole))) {
                throw new IllegalStateException("split and whole differ");
            }
            System.out.printf(
                    Locale.ROOT,
                    "%7s  %-30s %8.2f  %8.2f  %11.2f%n",
                    count,
                    draft.getKey(),
                    wholeS,
                    splitS,
                    splitS / wholeS);
        }
    }

    private static String whole(Replays replays, CaseBase base, Path heat) {
        try (WorkFolder work = WorkFolder.of(heat)) {
            return replayed(
                    replays, new ReplayRequest(Optional.of(base), Optional.empty(), Optional.of(work), PROGRAMS));
        }
    }

    private List<String> split(Replays replays, CaseBase base, List<Path> heat) throws Exception {
        ExecutorService programs = Executors.newFixedThreadPool(PROGRAMS);
        try {
            List<Callable<String>> all = new ArrayList<>();
            heat.forEach(work -> all.add(() -> part(replays, base, work)));
            List<String> results = new ArrayList<>();
            for (Future<String> one : programs.invokeAll(all)) {
                results.add(one.get());
            }
            return results;
        } finally {
            programs.shutdownNow();
        }
    }

    private String part(Replays replays, CaseBase base, Path heat) {
        try (Store store = Store.open(place, Clock.systemUTC());
                StoreParts parts = new StoreParts(store.parts().orElseThrow(), Program.running());
                WorkFolder work = WorkFolder.of(heat)) {
            return replayed(
                    replays,
                    new ReplayRequest(
                            Optional.of(base),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.of(work),
                            Optional.of(parts),
                            1));
        }
    }

    private static String replayed(Replays replays, ReplayRequest request) {
        return replays.toJson(replays.prepare(request).run(CaseProgress.NONE));
    }

    /** What an earlier run of the table finished would be found again. */
    private static void forgetParts(Path heat) {
        try (Stream<Path> found = Files.walk(heat)) {
            for (Path path : found.sorted(Comparator.reverseOrder())
                    .filter(path -> heat.relativize(path).toString().startsWith("replay-"))
                    .toList()) {
                Files.delete(path);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
