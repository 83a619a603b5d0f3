package org.tunica.outcomes;

/**
 * One scan that told whether a treated vein was closed, or a visit after it had been treated again.
 *
 * @param closed by its definition; never once it was treated again, whatever a scan shows then
 */
public record Look(int daysAfter, boolean closed) {}
