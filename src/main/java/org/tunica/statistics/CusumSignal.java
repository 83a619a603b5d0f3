package org.tunica.statistics;

/**
 * A chart reached its limit.
 *
 * @param side worse or better
 * @param caseNumber at which case, counted from 1
 * @param sinceCaseNumber the first case since the chart last stood at 0: the likeliest beginning of the change, not a proof of it
 */
public record CusumSignal(CusumSide side, int caseNumber, int sinceCaseNumber) {}
