package org.tunica.statistics;

/**
 * A curve read on a day.
 *
 * @param daysAfter the day asked for
 * @param atRisk cases still followed and without the event at the start of that day
 * @param free the share free of the event at its end
 */
public record SurvivalAt(int daysAfter, int atRisk, FreeShare free) {}
