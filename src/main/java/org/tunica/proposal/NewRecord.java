package org.tunica.proposal;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.ChangeRecord;
import org.tunica.knowledge.Knowledge;

/**
 * The first words of the record of a change.
 *
 * @param title what the change is about, in a few words
 * @param initials of the author, as they will stand in the record for ever
 */
public record NewRecord(String title, String initials) {
    /** Stands for the reason until the author writes it. */
    static final String NO_REASON = "not written yet";

    private static final Pattern INITIALS = Pattern.compile("[A-Z]{2,4}");
    private static final int LONGEST_TITLE = 80;
    private static final int LAST_NUMBER = 9_999;

    /** @throws FaultyInput when a record could not carry them */
    public NewRecord {
        if (title.isBlank() || title.length() > LONGEST_TITLE || !title.matches("[ -~]+")) {
            throw fault("title", "must be 1 to " + LONGEST_TITLE + " printable characters of ASCII");
        }
        if (!INITIALS.matcher(initials).matches()) {
            throw fault("initials", "must be 2 to 4 capitals, is \"" + initials + "\"");
        }
    }

    /**
     * The next free number of a record.
     *
     * @throws FaultyInput when there is none
     */
    public static String nextNumber(Knowledge knowledge) {
        int next = knowledge.changes().keySet().stream()
                        .mapToInt(Integer::parseInt)
                        .max()
                        .orElse(0)
                + 1;
        if (next > LAST_NUMBER) {
            throw fault("number", "every number of a record is taken");
        }
        return String.format(Locale.ROOT, "%04d", next);
    }

    /** The draft of the record. */
    public ChangeRecord draft(String number, LocalDate day) {
        return new ChangeRecord(
                number,
                title,
                ChangeRecord.Status.DRAFT,
                List.of(new ChangeRecord.Person("rule author", initials)),
                List.of(),
                List.of(),
                NO_REASON,
                List.of(),
                List.of(),
                List.of(),
                day,
                List.of(),
                List.of());
    }

    private static FaultyInput fault(String place, String says) {
        return new FaultyInput("change", List.of(new Fault(place, says)));
    }
}
