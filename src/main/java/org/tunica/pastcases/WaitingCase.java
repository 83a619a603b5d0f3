package org.tunica.pastcases;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.tunica.casefile.CaseFile;
import org.tunica.treatment.DeliveredSession;
import org.tunica.treatment.FollowUp;

/**
 * A case made anonymous that nobody has looked at yet: {@code tunica-waiting/1}. It holds what the {@link PastCase} will
 * hold, and is none before a person released it. Immutable.
 *
 * @param format {@link #FORMAT}
 * @param id as in {@link PastCase}, and so are the others
 */
public record WaitingCase(
        String format,
        String id,
        boolean invented,
        String site,
        OptionalInt year,
        Optional<Band> ageBandYears,
        Optional<Band> weightBandKg,
        CaseFile caseFile,
        List<DeliveredSession> delivered,
        FollowUp followUp,
        List<String> notes)
        implements Anonymous {

    /** The word a waiting case must carry under {@code format}. */
    public static final String FORMAT = "tunica-waiting/1";

    public WaitingCase {
        delivered = List.copyOf(delivered);
        notes = List.copyOf(notes);
    }

    /** The past case it becomes; the one place where a past case comes to be. */
    PastCase released() {
        return new PastCase(
                PastCase.FORMAT,
                id,
                invented,
                site,
                year,
                ageBandYears,
                weightBandKg,
                caseFile,
                delivered,
                followUp,
                notes);
    }
}
