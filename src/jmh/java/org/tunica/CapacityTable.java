package org.tunica;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.tunica.cluster.ClusterTable;
import org.tunica.replay.SplitReplayTable;
import org.tunica.web.ReplicaTable;

/**
 * Prints in one run what one machine holds past one process: one server against two over one PostgreSQL; past cases beside the
 * server against a search engine of three nodes; a replay by one program against one shared by two. Everything shares this
 * machine, and two answers of one question are compared.
 *
 * <p>Arguments: a folder for the cases of the replays (made and kept, 4 GB for a million); the largest number of cases,
 * 1,000,000 without. A million wants {@code -Xmx12g} and an hour.
 */
public final class CapacityTable {
    private static final int SECONDS_EACH = 10;
    private static final int QUESTIONS = 100;
    private static final List<Long> CASES = List.of(1_000L, 10_000L, 100_000L, 1_000_000L);
    private static final long FEWEST_INDEXED = 100_000;

    /** The draft that makes a replay look at every segment anew. */
    private static final String WORST = "3";

    private CapacityTable() {}

    /** Prints the tables. */
    public static void main(String[] args) throws Exception {
        long most = args.length > 1 ? Long.parseLong(args[1]) : CASES.get(CASES.size() - 1);
        List<Long> cases = CASES.stream().filter(count -> count <= most).toList();
        ReplicaTable.rows(Duration.ofSeconds(SECONDS_EACH));
        ClusterTable.rows(
                QUESTIONS,
                cases.stream().filter(count -> count >= FEWEST_INDEXED).toList());
        SplitReplayTable.rows(
                Path.of(args[0]), cases.stream().map(String::valueOf).toList(), draft -> draft.startsWith(WORST));
        System.exit(0);
    }
}
