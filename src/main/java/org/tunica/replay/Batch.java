package org.tunica.replay;

import java.util.List;

/**
 * Some cases in a row, the piece of work of a replay.
 *
 * @param number from 0, over all cases of the replay
 * @param digest of what the cases are read from
 * @param done how far the reading is behind them, in the unit of {@code all}
 */
record Batch(int number, String digest, List<CaseToReplay> cases, long done, long all) {
    Batch {
        cases = List.copyOf(cases);
    }
}
