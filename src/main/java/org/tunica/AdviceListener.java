package org.tunica;

import org.tunica.casefile.CaseFile;
import org.tunica.plan.Advice;

/** Hears of every advice that is given, after it is complete. It can change nothing of it. */
public interface AdviceListener {
    /** Hears nothing. */
    AdviceListener NONE = (caseFile, advice) -> {};

    /** An advice was given. Must come back at once and throw nothing. */
    void given(CaseFile caseFile, Advice advice);
}
