package org.tunica.statistics;

/** What a chart has signalled. */
public enum CusumSide {
    /** More failures than predicted. */
    WORSE,
    /** Fewer failures than predicted. */
    BETTER
}
