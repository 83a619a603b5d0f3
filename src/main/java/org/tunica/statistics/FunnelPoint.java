package org.tunica.statistics;

/**
 * A group between its limits.
 *
 * @param group the group
 * @param inner limits that chance keeps 95 times in 100
 * @param outer limits that chance keeps 998 times in 1000
 * @param place where it lies
 */
public record FunnelPoint(FunnelGroup group, FunnelLimits inner, FunnelLimits outer, FunnelPlace place) {

    static FunnelPoint of(FunnelGroup group, double targetShare) {
        FunnelLimits inner = FunnelLimits.of(targetShare, group.total(), Funnel.INNER_SHARE);
        FunnelLimits outer = FunnelLimits.of(targetShare, group.total(), Funnel.OUTER_SHARE);
        return new FunnelPoint(group, inner, outer, place(group.events(), inner, outer));
    }

    private static FunnelPlace place(int events, FunnelLimits inner, FunnelLimits outer) {
        if (events > outer.highEvents()) {
            return FunnelPlace.ABOVE_OUTER;
        }
        if (events < outer.lowEvents()) {
            return FunnelPlace.BELOW_OUTER;
        }
        if (events > inner.highEvents()) {
            return FunnelPlace.ABOVE_INNER;
        }
        return events < inner.lowEvents() ? FunnelPlace.BELOW_INNER : FunnelPlace.WITHIN;
    }
}
