package org.tunica.watching;

import java.time.LocalDate;
import org.tunica.casefile.Word;

/**
 * A review that is overdue or soon due.
 *
 * @param id of a rule, or "release" and its version
 * @param lastDay the last day on which it is in time
 */
public record DueReview(String id, String title, LocalDate lastDay, Due due) {
    /** How it stands on the day of the look. */
    public enum Due implements Word {
        OVERDUE,
        SOON
    }
}
