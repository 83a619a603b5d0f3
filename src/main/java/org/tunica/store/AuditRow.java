package org.tunica.store;

import java.time.Instant;
import java.util.List;

/**
 * One row of the audit trail. It holds ids and digests, nothing of a patient.
 *
 * @param number counts from 1 without a gap
 * @param at when, to the millisecond
 * @param actor who
 * @param act what, as {@link Act} spells it
 * @param subject about what
 * @param content digest of what was kept, with a random seal; empty when nothing was
 * @param previous hash of the row before
 * @param hash over the row before and this one
 */
public record AuditRow(
        long number,
        Instant at,
        String actor,
        String act,
        Subject subject,
        String content,
        String previous,
        String hash) {

    /** The row that follows on a head. */
    static AuditRow after(AuditHead head, Instant at, Actor by, Act act, Subject subject, String content) {
        return new AuditRow(head.number() + 1, at, by.id(), act.word(), subject, content, head.hash(), "").hashed();
    }

    static AuditRow of(Row row) {
        return new AuditRow(
                row.number("number"),
                Instant.ofEpochMilli(row.number("at_ms")),
                row.text("actor"),
                row.text("act"),
                new Subject(row.text("subject_kind"), row.text("subject_id")),
                row.text("content"),
                row.text("previous"),
                row.text("hash"));
    }

    Row row() {
        return new Row(
                Table.AUDIT,
                List.of(
                        Long.toString(number),
                        Long.toString(at.toEpochMilli()),
                        actor,
                        act,
                        subject.kind(),
                        subject.id(),
                        content,
                        previous,
                        hash));
    }

    private AuditRow hashed() {
        return new AuditRow(number, at, actor, act, subject, content, previous, hash(row()));
    }

    /** The hash a row should have: over every column before the hash itself, of which the last is the hash before. */
    static String hash(Row row) {
        return Fingerprint.of(row.values().subList(0, row.values().size() - 1));
    }
}
