package org.tunica.statistics;

import java.util.OptionalInt;

/**
 * When half of the cases had the event: the first day on which the curve stands at one half or lower; its limits are the days on
 * which the limits of the curve do.
 *
 * @param daysAfter the day, empty when more than half stayed free as long as they were followed
 * @param lowDaysAfter lower limit
 * @param highDaysAfter upper limit
 */
public record MedianTime(OptionalInt daysAfter, OptionalInt lowDaysAfter, OptionalInt highDaysAfter) {}
