package org.tunica.cli;

import java.io.PrintWriter;
import java.util.Locale;
import org.tunica.replay.HeatAhead;
import org.tunica.replay.Replay;

/** Tells beforehand how long the heat model will keep a replay waiting, from a few searches that are timed. */
final class HeatWaiting {
    private static final double NANOS_PER_SECOND = 1e9;
    private static final double SECONDS_PER_MINUTE = 60;
    private static final double WORTH_TELLING_SECONDS = 10;

    private final PrintWriter err;
    private final int threads;

    HeatWaiting(PrintWriter err, int threads) {
        this.err = err;
        this.threads = threads;
    }

    void tell(Replay replay) {
        HeatAhead ahead = replay.heatAhead();
        if (ahead.some().isEmpty()) {
            return;
        }
        double eachSeconds = eachSeconds(replay, ahead);
        double allSeconds = eachSeconds * ahead.missingForAll() / threads;
        if (allSeconds < WORTH_TELLING_SECONDS) {
            return;
        }
        err.printf(
                Locale.ROOT,
                "The heat model has about %,d settings to seek that are not at hand%s; at %.2f s each on %d %s that takes at"
                        + " most about %s.%n",
                ahead.missingForAll(),
                ahead.sharedModel() ? "" : ", for it is another in the draft",
                eachSeconds,
                threads,
                threads == 1 ? "thread" : "threads",
                time(allSeconds));
        err.flush();
    }

    private static double eachSeconds(Replay replay, HeatAhead ahead) {
        long began = System.nanoTime();
        replay.seek(ahead.some());
        return (System.nanoTime() - began) / NANOS_PER_SECOND / ahead.some().size();
    }

    private static String time(double seconds) {
        if (seconds < 2 * SECONDS_PER_MINUTE) {
            return Math.round(seconds) + " seconds";
        }
        double minutes = seconds / SECONDS_PER_MINUTE;
        return minutes < 2 * SECONDS_PER_MINUTE
                ? Math.round(minutes) + " minutes"
                : Math.round(minutes / SECONDS_PER_MINUTE) + " hours";
    }
}
