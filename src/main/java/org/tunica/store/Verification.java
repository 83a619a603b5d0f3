package org.tunica.store;

import java.util.List;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;

/**
 * What a check of the audit trail found.
 *
 * @param auditRows rows of the trail that were checked
 * @param keptRows rows of other tables that were checked against it
 * @param head the last row of the trail
 * @param faults the first bad row of the trail, if there is one, and then what is kept otherwise than the trail tells
 */
public record Verification(long auditRows, long keptRows, AuditHead head, List<Fault> faults) {
    public Verification {
        faults = List.copyOf(faults);
    }

    /** Whether nothing was wrong. */
    public boolean sound() {
        return faults.isEmpty();
    }

    /**
     * Ends the work when anything was wrong.
     *
     * @param what was checked
     * @throws FaultyInput with what was found
     */
    public void throwUnlessSound(String what) {
        if (!sound()) {
            throw new FaultyInput(what, faults);
        }
    }
}
