package org.tunica.store;

import java.time.Instant;

/**
 * What a backup holds.
 *
 * @param at when it was made
 * @param head of the audit trail in it; noted elsewhere it proves later that the backup is the one that was made
 * @param rows of all tables together
 */
public record Backup(Instant at, AuditHead head, long rows) {
    /** The word a backup carries under {@code format}. */
    public static final String FORMAT = "tunica-backup/1";
}
