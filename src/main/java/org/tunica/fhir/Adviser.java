package org.tunica.fhir;

import org.tunica.casefile.CaseFile;
import org.tunica.plan.AdviceSoFar;

/** Gives as much of the advice for a case as there is when the answer must go out. */
@FunctionalInterface
public interface Adviser {
    /** The advice, whole or so far. */
    AdviceSoFar advise(CaseFile caseFile);
}
