package org.tunica.cli;

import java.io.PrintWriter;
import java.util.Locale;
import org.tunica.pastcases.CaseProgress;

/** A bar on standard error that grows with the work; nothing at all where nobody watches a terminal. */
final class ProgressBar implements CaseProgress, AutoCloseable {
    private static final int WIDTH = 40;

    private final String doing;
    private final PrintWriter err;
    private final boolean watched;
    private int drawn = -1;

    private ProgressBar(String doing, PrintWriter err, boolean watched) {
        this.doing = doing;
        this.err = err;
        this.watched = watched;
    }

    /** A bar that is drawn only when the program is used at a terminal. */
    static ProgressBar atTerminal(String doing, PrintWriter err) {
        return new ProgressBar(doing, err, System.console() != null);
    }

    static ProgressBar always(String doing, PrintWriter err) {
        return new ProgressBar(doing, err, true);
    }

    @Override
    public void at(long done, long all, long cases) {
        int now = all <= 0 ? WIDTH : (int) Math.min(WIDTH, WIDTH * done / all);
        if (watched && now != drawn) {
            drawn = now;
            err.print("\r" + doing + " [" + "#".repeat(now) + " ".repeat(WIDTH - now) + "] "
                    + String.format(Locale.ROOT, "%,d", cases) + " cases");
            err.flush();
        }
    }

    /** Leaves the line, so that what follows starts on its own. */
    @Override
    public void close() {
        if (drawn >= 0) {
            err.println();
        }
    }
}
