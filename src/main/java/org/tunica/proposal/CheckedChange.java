package org.tunica.proposal;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Sha256;
import org.tunica.knowledge.ChangeRecord;
import org.tunica.knowledge.RecordLists;
import org.tunica.review.Difference;

/**
 * A change with every check of it: the document {@code tunica-change-check/1}, on whose digest people agree. The same copy
 * on the same day gives the same bytes.
 *
 * @param opening how the change began
 * @param day on which it was checked, UTC
 * @param record what its record tells; absent when the change does not load
 * @param covers what exactly was checked; absent when the change does not load
 * @param differences what differs, in words
 * @param lines what differs, line by line
 */
public record CheckedChange(
        Opening opening,
        LocalDate day,
        Optional<Told> record,
        Optional<Covers> covers,
        List<Check> checks,
        List<Difference> differences,
        String lines) {
    /** The word the document carries under {@code format}. */
    public static final String FORMAT = "tunica-change-check/1";

    public CheckedChange {
        checks = List.copyOf(checks);
        differences = List.copyOf(differences);
    }

    /**
     * What was checked.
     *
     * @param rules digest over rules and knowledge
     * @param scenarios digest over the scenarios beside them
     */
    public record Covers(String rules, String scenarios) {}

    /** What the record of the change tells. */
    public record Told(String title, String reason, RecordLists lists) {
        static Told of(ChangeRecord record) {
            return new Told(
                    record.title(),
                    record.reason(),
                    new RecordLists(record.sources(), record.rules(), record.limits(), record.retires()));
        }
    }

    /**
     * Reads the document back.
     *
     * @throws org.tunica.casefile.FaultyInput with every fault
     */
    public static CheckedChange read(String what, String json) {
        return CheckedChangeReader.read(what, json);
    }

    /** The gravest result of all checks. */
    public Check.Result result() {
        return checks.stream().map(Check::result).max(Comparator.naturalOrder()).orElse(Check.Result.BAR);
    }

    /** The document. */
    public String toJson() {
        return CheckedChangeText.of(this);
    }

    /** Digest of the document. */
    public String digest() {
        return Sha256.of(toJson());
    }
}
