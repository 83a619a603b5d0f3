package org.tunica.pastcases;

import java.util.List;
import java.util.OptionalInt;
import org.tunica.casefile.CaseFile;
import org.tunica.treatment.DeliveredSession;
import org.tunica.treatment.FollowUp;

/**
 * A finished case as its clinic knows it, to be made anonymous. It never enters a base.
 *
 * @param caseFile what was known before
 * @param delivered what was done
 * @param followUp how it went
 * @param year of the procedure; where it is not given, that of the first day recorded
 * @param site a pseudonym of the clinic, as {@link PastCase#SITE}
 * @param invented whether nobody was ever treated like this
 * @param notes what else was written, in words
 */
public record Finished(
        CaseFile caseFile,
        List<DeliveredSession> delivered,
        FollowUp followUp,
        OptionalInt year,
        String site,
        boolean invented,
        List<String> notes) {
    public Finished {
        delivered = List.copyOf(delivered);
        notes = List.copyOf(notes);
    }
}
