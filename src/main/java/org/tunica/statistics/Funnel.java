package org.tunica.statistics;

import java.util.List;

/**
 * Groups or periods against a target share, with limits that widen as groups get smaller (Spiegelhalter, Stat Med
 * 2005;24:1185-1202). With twenty groups one is expected outside the inner limits by chance alone. No adjustment for what the
 * patients of a group bring with them.
 *
 * @param targetShare what is held against
 * @param points the groups in the order given
 */
public record Funnel(double targetShare, List<FunnelPoint> points) {
    /** Customary warning limits: two-sided 95 %. */
    public static final double INNER_SHARE = 0.95;

    /** Customary limits of action, three standard deviations of a normal distribution: two-sided 99.8 %. */
    public static final double OUTER_SHARE = 0.998;

    public Funnel {
        Checked.share("targetShare", targetShare);
        points = List.copyOf(points);
    }

    public static Funnel against(double targetShare, List<FunnelGroup> groups) {
        Checked.share("targetShare", targetShare);
        return new Funnel(
                targetShare,
                groups.stream().map(group -> FunnelPoint.of(group, targetShare)).toList());
    }

    /** The limits of a group of any size, to draw them between the groups. */
    public FunnelLimits limits(int total, double chanceShare) {
        Checked.atLeast("total", total, 1);
        Checked.properShare("chanceShare", chanceShare);
        return FunnelLimits.of(targetShare, total, chanceShare);
    }

    /** Groups outside the inner limits or the outer ones. */
    public List<FunnelPoint> outside() {
        return points.stream()
                .filter(point -> point.place() != FunnelPlace.WITHIN)
                .toList();
    }
}
