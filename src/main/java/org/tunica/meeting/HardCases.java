package org.tunica.meeting;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.FaultyInput;
import org.tunica.couch.DemoCases;
import org.tunica.couch.PastLibrary;
import org.tunica.frame.OpenCases;
import org.tunica.store.KeptCase;
import org.tunica.store.Store;

/** Finds behind the pages, case by case, which of the cases saved last the rules call hard. What was found is remembered. */
final class HardCases implements AutoCloseable {
    private static final int MOST_REMEMBERED = 1_000;

    private final Tunica tunica;
    private final Store store;
    private final OpenCases cases;
    private final PastLibrary past;
    private final Map<Version, Found> found = new LinkedHashMap<>();
    private final ExecutorService behind = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "hard-cases");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        return thread;
    });

    HardCases(Tunica tunica, Store store, OpenCases cases, PastLibrary past) {
        this.tunica = tunica;
        this.store = store;
        this.cases = cases;
        this.past = past;
    }

    /** A version of a case, held against the past cases as they were at some change. */
    private record Version(String caseRef, long version, long pastChange) {
        static Version of(KeptCase kept, long pastChange) {
            return new Version(kept.caseRef(), kept.version(), pastChange);
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

    /**
     * What is known of a case now; what is not is looked for behind.
     *
     * @param pastChange the last change of the past cases
     */
    Found of(KeptCase kept, long pastChange) {
        Version version = Version.of(kept, pastChange);
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
        behind.execute(() -> look(kept, version));
        return Found.NOT_YET;
    }

    private void look(KeptCase kept, Version version) {
        Found looked;
        try {
            looked = new Found(true, signs(kept));
        } catch (RuntimeException e) {
            // what could not be looked at must not seem easy; the page of the case tells what failed
            looked =
                    new Found(true, List.of("The signs of this case could not be computed; somebody must look at it."));
        }
        synchronized (found) {
            found.put(version, looked);
        }
    }

    private List<String> signs(KeptCase kept) {
        try {
            CaseFile caseFile = cases.read(kept);
            return new Signs(tunica, past.forCase(DemoCases.invented(store.cases(), kept)))
                    .of(caseFile, tunica.advise(caseFile));
        } catch (FaultyInput e) {
            return List.of("The rules in force cannot read this case; somebody must look at it.");
        }
    }

    @Override
    public void close() {
        behind.shutdownNow();
    }
}
