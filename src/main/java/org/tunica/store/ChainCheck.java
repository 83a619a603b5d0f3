package org.tunica.store;

import java.util.Optional;
import org.tunica.casefile.Fault;

/** Follows the audit trail row by row, in order of number, up to the first that does not follow on the one before. */
final class ChainCheck {
    private AuditHead last = AuditHead.NONE;
    private Optional<Fault> bad = Optional.empty();
    private long rows;

    /** Takes the next row; after a bad one the rest is passed over. */
    void next(Row row) {
        if (bad.isPresent()) {
            return;
        }
        rows++;
        long expected = last.number() + 1;
        long number = row.number("number");
        if (number != expected) {
            bad = fault(expected, "is missing; row " + number + " stands in its place");
        } else if (!row.text("previous").equals(last.hash())) {
            bad = fault(
                    number, "does not follow on the row before: one of them was changed, moved, inserted or removed");
        } else if (!row.text("hash").equals(AuditRow.hash(row))) {
            bad = fault(number, "was changed: its hash does not fit what it says");
        } else {
            last = new AuditHead(number, row.text("hash"));
        }
    }

    /** Compares the last row with the head that is kept apart from the rows. */
    void end(AuditHead head) {
        if (bad.isEmpty() && head.number() > last.number()) {
            bad = fault(
                    last.number() + 1,
                    "is missing, and with it every row up to " + head.number() + ", the last by the head");
        } else if (bad.isEmpty() && head.number() < last.number()) {
            bad = fault(head.number() + 1, "was added without the head, which ends with row " + head.number());
        } else if (bad.isEmpty() && !head.hash().equals(last.hash())) {
            bad = fault(last.number(), "is not the last row by the head, whose hash differs");
        }
    }

    private static Optional<Fault> fault(long number, String says) {
        return Optional.of(new Fault("audit row " + number, says));
    }

    /** The last row that was good. */
    AuditHead last() {
        return last;
    }

    /** How many rows were looked at. */
    long rows() {
        return rows;
    }

    /** The first bad row. */
    Optional<Fault> bad() {
        return bad;
    }
}
