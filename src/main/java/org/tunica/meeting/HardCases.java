package org.tunica.meeting;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.tunica.Tunica;
import org.tunica.casefile.FaultyInput;
import org.tunica.plan.Advice;
import org.tunica.store.KeptCase;
import org.tunica.wording.ReasonWords;
import org.tunica.wording.SegmentWords;

/** Finds behind the pages, case by case, which of the cases saved last the rules call hard. What was found is remembered. */
final class HardCases implements AutoCloseable {
    private static final int MOST_REMEMBERED = 1_000;

    private final Tunica tunica;
    private final Map<Version, Found> found = new LinkedHashMap<>();
    private final ExecutorService behind = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "hard-cases");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        return thread;
    });

    HardCases(Tunica tunica) {
        this.tunica = tunica;
    }

    /** A version of a case. */
    record Version(String caseRef, long version) {
        static Version of(KeptCase kept) {
            return new Version(kept.caseRef(), kept.version());
        }
    }

    /**
     * What was found of a case.
     *
     * @param looked whether it was looked at; else it is still to be
     * @param signs of a hard case, each with its segment
     */
    record Found(boolean looked, List<String> signs) {
        static final Found NOT_YET = new Found(false, List.of());
    }

    /** What is known of a case now; what is not is looked for behind. */
    Found of(KeptCase kept) {
        Version version = Version.of(kept);
        synchronized (found) {
            Found known = found.get(version);
            if (known != null) {
                return known;
            }
            while (found.size() >= MOST_REMEMBERED) {
                found.remove(found.keySet().iterator().next());
            }
            found.put(version, Found.NOT_YET);
        }
        behind.execute(() -> look(kept));
        return Found.NOT_YET;
    }

    private void look(KeptCase kept) {
        Found looked;
        try {
            looked = new Found(true, signs(kept));
        } catch (RuntimeException e) {
            // what could not be looked at must not seem easy; the page of the case tells what failed
            looked =
                    new Found(true, List.of("The signs of this case could not be computed; somebody must look at it."));
        }
        synchronized (found) {
            found.put(Version.of(kept), looked);
        }
    }

    private List<String> signs(KeptCase kept) {
        try {
            return signs(tunica.advise(tunica.readCase("case", kept.json().getBytes(StandardCharsets.UTF_8))));
        } catch (FaultyInput e) {
            return List.of("The rules in force cannot read this case; somebody must look at it.");
        }
    }

    /** The signs in an advice, each with its segment. */
    static List<String> signs(Advice advice) {
        List<String> signs = new ArrayList<>();
        advice.segments()
                .forEach(segment -> segment.hardCase()
                        .forEach(sign -> signs.add(SegmentWords.title(segment) + ": " + ReasonWords.line(sign))));
        return signs;
    }

    @Override
    public void close() {
        behind.shutdownNow();
    }
}
