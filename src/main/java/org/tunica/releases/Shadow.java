package org.tunica.releases;

import java.util.Optional;
import org.tunica.Tunica;
import org.tunica.plan.Advice;
import org.tunica.replay.Comparer;
import org.tunica.store.Actor;
import org.tunica.store.Store;

/**
 * Runs the next release silently beside the one in force and counts what it would have said otherwise. Nothing of it is ever
 * shown as advice, and no failure of it reaches the answer.
 */
public final class Shadow {
    private static final Actor BY = new Actor("shadow");
    private static final String NONE = "none";

    private final Store store;
    private final Engines engines;

    /** The shadow of a place. */
    public Shadow(Store store, Engines engines) {
        this.store = store;
        this.engines = engines;
    }

    /**
     * Asks the shadow, if there is one, what it would have said; never throws.
     *
     * @param spoke the engine whose answer was given
     * @param caseJson the case as it was read
     * @return what was counted; empty when there is no shadow, or its failure could not even be noted
     */
    public Optional<ShadowRun> beside(Engines.Engine spoke, byte[] caseJson, Advice said) {
        try {
            return engines.shadow().map(shadow -> kept(shadow, spoke, compared(shadow, spoke, caseJson, said)));
        } catch (RuntimeException e) {
            return Optional
                    .empty(); // the answer stands; whoever keeps the store is told elsewhere that it is not reached
        }
    }

    private static ShadowRun compared(Engines.Engine shadow, Engines.Engine spoke, byte[] caseJson, Advice said) {
        try {
            Tunica other = shadow.tunica();
            Advice unsaid = other.advise(other.readCase("case", caseJson));
            Comparer comparer =
                    Comparer.of(spoke.tunica().knowledge(), spoke.tunica().rules(), other.knowledge(), other.rules());
            return ShadowRun.of(comparer.compare(said, unsaid));
        } catch (RuntimeException | StackOverflowError e) {
            return ShadowRun.failed(e);
        }
    }

    private ShadowRun kept(Engines.Engine shadow, Engines.Engine spoke, ShadowRun run) {
        store.releases()
                .shadowRun(BY, shadow.version().orElseThrow(), spoke.version().orElse(NONE), run.toJson());
        return run;
    }

    /** What was counted of a release while it ran as a shadow. */
    public ShadowRun.Counts counts(String version) {
        return ShadowRun.Counts.of(store.releases().shadowRuns(version).stream()
                .map(kept -> ShadowRun.read(kept.body()))
                .toList());
    }
}
