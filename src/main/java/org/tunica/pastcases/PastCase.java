package org.tunica.pastcases;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.tunica.casefile.CaseFile;
import org.tunica.treatment.DeliveredSession;
import org.tunica.treatment.FollowUp;

/**
 * A finished case without the person: {@code tunica-past/1}. Immutable.
 *
 * <p>{@code caseFile}, {@code delivered} and {@code followUp} keep the shape they had, so that everything that reads those
 * reads these; what could name someone is taken out of them: exact age, weight and height, the day, the people, every free
 * text. Their {@code caseRef} is the random {@code id}. Days count from the procedure.
 *
 * @param format {@link #FORMAT}
 * @param id random; nothing leads from it back to the person
 * @param invented whether the case was made up, by a generator or for a demonstration
 * @param site a pseudonym of the clinic
 * @param year of the procedure, or unknown
 * @param ageBandYears age, as a band; 90 and older together
 * @param weightBandKg weight, as a band
 * @param caseFile what was known before
 * @param delivered what was done
 * @param followUp how it went; a case without any outcome is none
 * @param notes free text, reduced to clinical words and numbers with units; what was taken out shows as a placeholder
 */
public record PastCase(
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

    /** The word a past case must carry under {@code format}. */
    public static final String FORMAT = "tunica-past/1";

    /** What an id looks like. */
    public static final String ID = "p-[0-9a-f]{24}";

    /** What the pseudonym of a site looks like. */
    public static final String SITE = "site-[0-9a-z]{1,16}";

    public PastCase {
        delivered = List.copyOf(delivered);
        notes = List.copyOf(notes);
    }
}
