package org.tunica.replay;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Bundle;
import org.tunica.pastcases.CaseBase;
import org.tunica.pastcases.CaseProgress;
import org.tunica.physics.HeatMemory;
import org.tunica.physics.HeatQuestion;

/**
 * Prints how long replays of 1,000, 10,000 and 100,000 past cases under two releases take, for drafts that move little and
 * drafts that move everything. The cases lie in a case base on disk, the answers of the heat model in a work folder; these are
 * borrowed, see {@link BorrowedHeat}. Arguments: a folder for all that (made and kept), the numbers of cases.
 */
public final class ReplayTable {
    private static final String DISTANCES = "knowledge/limits/distances.yaml";
    private static final String WEIGHTS = "knowledge/weights.yaml";

    private ReplayTable() {}

    public static void main(String[] args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args[0]));
        Tunica shipped = Tunica.shipped();
        System.out.printf("cores %d%n", Runtime.getRuntime().availableProcessors());
        System.out.println("cases    draft                          threads  seconds  segments  otherwise");
        for (String count :
                args.length > 1 ? List.of(args).subList(1, args.length) : List.of("1000", "10000", "100000")) {
            CaseBase base = base(shipped, folder.resolve("base-" + count), Long.parseLong(count));
            for (Map.Entry<String, Tunica> draft : drafts().entrySet()) {
                time(shipped, draft.getValue(), draft.getKey(), count, base, folder);
            }
        }
    }

    private static void time(Tunica before, Tunica after, String says, String count, CaseBase base, Path folder)
            throws IOException {
        try (WorkFolder work = WorkFolder.of(folder.resolve("heat-" + count))) {
            HeatMemory memory = work.heat(before.physics());
            lend(before, memory, base);
            ReplayRequest request = new ReplayRequest(Optional.of(base), Optional.empty(), Optional.empty(), threads());
            Replay replay = Replay.of(side(before, memory), side(after, memory), request, Object::toString);
            long began = System.nanoTime();
            ReplayResult result = replay.run(CaseProgress.NONE);
            System.out.printf(
                    Locale.ROOT,
                    "%7s  %-30s %7d  %7.1f  %8d  %9d%n",
                    count,
                    says,
                    threads(),
                    (System.nanoTime() - began) / 1e9,
                    result.cases().segmentsCount(),
                    result.changedSegmentsCount());
        }
    }

    private static int threads() {
        return Runtime.getRuntime().availableProcessors();
    }

    private static ReleaseSide side(Tunica release, HeatMemory memory) {
        return ReleaseSide.of(release.release(), release.knowledge(), release.rules(), memory);
    }

    static CaseBase base(Tunica tunica, Path folder, long count) {
        CaseBase base = tunica.pastCases().caseBase(folder);
        if (!Files.exists(folder.resolve(CaseBase.CASES))) {
            base.add(tunica.pastCases().inventedLibrary(1).cases(count));
        }
        return base;
    }

    /** Fills the memory with borrowed answers to whatever the cases can ask. */
    static void lend(Tunica tunica, HeatMemory memory, CaseBase base) {
        BorrowedHeat borrowed = new BorrowedHeat(tunica.physics());
        new DemoCases()
                .each(
                        0,
                        batch -> batch.cases()
                                .forEach(one -> lend(one.read(side(tunica, memory)), tunica, memory, borrowed)));
        base.each(past -> lend(past.caseFile(), tunica, memory, borrowed), CaseProgress.NONE);
    }

    private static void lend(CaseFile caseFile, Tunica tunica, HeatMemory memory, BorrowedHeat borrowed) {
        for (Limb limb : caseFile.limbs()) {
            for (Segment segment : limb.segments()) {
                for (HeatQuestion question : tunica.physics().heatQuestions(caseFile, segment)) {
                    if (memory.recall(question).isEmpty()) {
                        memory.keep(question, borrowed.answer(question));
                    }
                }
            }
        }
    }

    static Map<String, Tunica> drafts() {
        Map<String, Tunica> drafts = new TreeMap<>();
        drafts.put(
                "1 other words of one rule",
                draft("rules/2-exclusions/heat-near-skin.rule", "so shallow", "a shallow"));
        drafts.put("2 heat.skin-gap.min 5 to 6", draft(DISTANCES, "  value: 5\n", "  value: 6\n"));
        drafts.put(
                "3 a caution every leg has",
                draft("rules/3-cautions/weak-evidence.rule", "then caution moderately", "then caution slightly"));
        drafts.put("4 weight of strong reasons", draft(WEIGHTS, "or takes, value: 2,", "or takes, value: 2.5,"));
        return drafts;
    }

    private static Tunica draft(String path, String before, String after) {
        Map<String, String> texts = new TreeMap<>(Bundle.shipped().texts());
        String text = texts.get(path);
        if (!text.contains(before)) {
            throw new IllegalStateException(path + " does not say: " + before);
        }
        texts.put(path, text.replaceFirst(Pattern.quote(before), after));
        return Tunica.of(Bundle.of(texts));
    }
}
