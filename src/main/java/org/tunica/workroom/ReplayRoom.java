package org.tunica.workroom;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tunica.Tunica;
import org.tunica.knowledge.Bundle;
import org.tunica.releases.Engines;
import org.tunica.replay.ReplayRequest;
import org.tunica.store.Actor;
import org.tunica.store.Store;

/**
 * Replays behind the scenes, one at a time, and those that are finished. Safe for several threads. Closing it ends what this
 * program does of the one that runs, which goes on where it was: at the other servers over one database, or when it is started
 * again.
 */
public interface ReplayRoom extends AutoCloseable {
    /** The replays beside a store: in its folder, or in its database, where all servers over it work at them. */
    static ReplayRoom of(Store store, Engines engines, Reviews reviews, Clock clock) {
        return store.replays().isPresent()
                ? new SharedReplays(store, engines, reviews, clock)
                : new FolderReplays(store, reviews, clock);
    }

    /**
     * What is replayed now.
     *
     * @param of what, in words, for example "change 0091"
     * @param by who began it
     * @param casesDone so far
     * @param casesAll that there are
     */
    record Running(String key, String of, String by, Instant since, long casesDone, long casesAll) {}

    /**
     * Two sides of a replay.
     *
     * @param against rules in force, or those the change began with
     * @param draft the rules proposed
     */
    record Sides(Bundle against, Bundle draft) {
        private static final int SHORT = 16;
        private static final int AFTER_ALGORITHM = "sha256:".length();

        String key() {
            return brief(against) + "-" + brief(draft);
        }

        private static String brief(Bundle bundle) {
            return bundle.digest().substring(AFTER_ALGORITHM, AFTER_ALGORITHM + SHORT);
        }
    }

    /** What is replayed now, if anything is. */
    Optional<Running> running();

    /** What is replayed now, when it is these two. */
    default Optional<Running> running(Sides sides) {
        return running().filter(now -> now.key().equals(sides.key()));
    }

    /** Why the last replay of these two came to no result; empty when none failed. */
    List<String> failure(Sides sides);

    /** The finished replay of these two, {@code tunica-replay/1} byte for byte. */
    Optional<String> finished(Sides sides);

    /**
     * Begins a replay of the demonstration cases and so many made-up ones.
     *
     * @param change its number
     * @param against the engine of what is in force, so that the result bears its name
     * @throws org.tunica.casefile.FaultyInput when another runs, or the draft does not load
     */
    void begin(Actor by, String change, Tunica against, Sides sides, ReplayRequest.Invented invented);

    @Override
    void close();
}
