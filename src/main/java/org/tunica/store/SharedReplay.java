package org.tunica.store;

import java.time.Instant;

/**
 * A replay that the servers over one database do together.
 *
 * @param id under which its result is found again
 * @param change number of the change whose rules are tried
 * @param against digest of the rules it is held against
 * @param draft digest of the rules that are tried
 * @param seed of the made-up cases
 * @param inventedCount how many of them
 * @param by who asked for it
 * @param doneCount cases done so far, about
 * @param result empty until it is finished
 * @param failure why it came to no result; empty when it did not fail
 */
public record SharedReplay(
        String id,
        String change,
        String against,
        String draft,
        long seed,
        long inventedCount,
        String by,
        Instant since,
        long doneCount,
        String result,
        String failure) {

    /** One that was just asked for. */
    public static SharedReplay asked(
            String id,
            String change,
            String against,
            String draft,
            long seed,
            long inventedCount,
            String by,
            Instant since) {
        return new SharedReplay(id, change, against, draft, seed, inventedCount, by, since, 0, "", "");
    }
}
