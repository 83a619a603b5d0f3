package org.tunica.store;

import java.time.Instant;

/**
 * The row of the audit trail that tells how something came to be as it is.
 *
 * @param auditNumber its number, which also orders what is kept by time
 */
public record Stamp(long auditNumber, Instant at, String by) {}
