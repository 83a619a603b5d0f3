package org.tunica.statistics;

/**
 * One day of a curve on which something was seen.
 *
 * @param daysAfter the day
 * @param atRisk cases still followed and without the event at the start of that day
 * @param events events of that day
 * @param censored cases last looked at that day; they count as at risk for the events of the same day
 * @param free the share free of the event from that day on
 */
public record SurvivalStep(int daysAfter, int atRisk, int events, int censored, FreeShare free) {}
