package org.tunica.statistics;

/** Where a group lies; outside the inner limits is a reason to look, outside the outer ones to look now. */
public enum FunnelPlace {
    BELOW_OUTER,
    BELOW_INNER,
    WITHIN,
    ABOVE_INNER,
    ABOVE_OUTER
}
