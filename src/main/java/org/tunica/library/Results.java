package org.tunica.library;

import java.util.ArrayList;
import java.util.List;
import java.util.function.LongSupplier;
import org.tunica.Tunica;
import org.tunica.archive.PastCaseDesk;
import org.tunica.archive.Released;
import org.tunica.frame.Remembered;
import org.tunica.invented.InventedLibrary;
import org.tunica.outcomes.Audit;
import org.tunica.outcomes.AuditQuestion;
import org.tunica.pastcases.PastCase;

/** Audits of what is released at a store, or of made-up cases. Safe for several threads. */
public final class Results {
    private static final int MOST_REMEMBERED = 24;

    private final LongSupplier lastChange;
    private final Remembered<Asked, Found> found;

    /** @param lastChange different whenever something was released or taken out */
    Results(Tunica tunica, PastCaseDesk desk, LongSupplier lastChange) {
        this.lastChange = lastChange;
        this.found = new Remembered<>(MOST_REMEMBERED, asked -> audit(tunica, desk, asked));
    }

    private record Asked(long change, boolean invented, AuditQuestion question) {}

    /**
     * An audit.
     *
     * @param leftOut ids of past cases that the rules in force cannot read
     */
    public record Found(Audit audit, List<String> leftOut) {
        public Found {
            leftOut = List.copyOf(leftOut);
        }
    }

    /** Whether a past case was ever released here. */
    boolean any() {
        return lastChange.getAsLong() > 0;
    }

    /**
     * The results of past cases.
     *
     * @param invented whether those of made-up cases are wanted instead of those released here
     * @throws org.tunica.casefile.FaultyInput with everything that cannot be asked
     */
    public Found of(AuditQuestion question, boolean invented) {
        return found.of(new Asked(invented ? 0 : lastChange.getAsLong(), invented, question));
    }

    private static Found audit(Tunica tunica, PastCaseDesk desk, Asked asked) {
        if (asked.invented()) {
            List<PastCase> cases = tunica.pastCases()
                    .inventedLibrary(InventedLibrary.USUAL_SEED)
                    .cases(InventedLibrary.USUAL_COUNT)
                    .toList();
            return new Found(tunica.audits().audit(cases::forEach, asked.question()), List.of());
        }
        Released released = desk.released();
        Audit audit = tunica.audits().audit(released::to, asked.question());
        return new Found(audit, new ArrayList<>(released.leftOut()));
    }
}
