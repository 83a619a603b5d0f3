package org.tunica.heat;

/** Spread of how warm a nerve or the skin gets. */
public record WarmedSpread(Interval peakC, Interval cem43Min) {}
