package org.tunica.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.tunica.statistics.Funnel;
import org.tunica.statistics.FunnelLimits;
import org.tunica.statistics.FunnelPlace;
import org.tunica.statistics.FunnelPoint;

/**
 * Groups or periods against a target share.
 *
 * @param head what the caller says of it
 * @param event what is counted, such as "open at the scan of day 365"
 * @param kind whether the points are groups side by side or periods one after the other
 * @param funnel at least one group
 */
public record FunnelChart(ChartHead head, String event, Kind kind, Funnel funnel) {
    private static final double PERCENT = 100;
    private static final double TENS = 10;

    /** What the points are. */
    public enum Kind {
        GROUPS,
        PERIODS;

        /** One of them in words. */
        public String word() {
            return this == GROUPS ? "group" : "period";
        }
    }

    public FunnelChart {
        if (funnel.points().isEmpty()) {
            throw new IllegalArgumentException("funnel must hold at least one group");
        }
    }

    /** The words and the table. */
    public ChartWords words() {
        return new ChartWords(
                head.title(),
                head.subtitle(),
                "Counted: " + event + ". Limits: how many chance alone allows at the target of " + target()
                        + ", given the " + kind.word() + "'s size.",
                List.of(kind.word(), "counted", "share", "95 % limits", "99.8 % limits", "lies"),
                funnel.points().stream().map(FunnelChart::row).toList(),
                head.notesAfter(findings()));
    }

    /** Lower end of an axis that holds all points and limits. */
    public double axisFromPercent() {
        return TENS * Math.floor(percents().min().orElseThrow() / TENS);
    }

    /** Upper end of that axis. */
    public double axisToPercent() {
        return Math.max(
                axisFromPercent() + TENS, TENS * Math.ceil(percents().max().orElseThrow() / TENS));
    }

    private DoubleStream percents() {
        return funnel.points().stream()
                .flatMapToDouble(point -> DoubleStream.of(
                        PERCENT * point.group().share(),
                        PERCENT * point.outer().lowShare(),
                        PERCENT * point.outer().highShare()));
    }

    /** The target share in words. */
    public String target() {
        return Figures.tenths(PERCENT * funnel.targetShare()) + " %";
    }

    private static List<String> row(FunnelPoint point) {
        return List.of(
                point.group().name(),
                point.group().events() + " of " + point.group().total(),
                Figures.tenths(PERCENT * point.group().share()) + " %",
                range(point.inner()),
                range(point.outer()),
                word(point.place()));
    }

    private static String range(FunnelLimits limits) {
        return limits.lowEvents() + " to " + limits.highEvents();
    }

    /** Where a point lies, in words. */
    public static String word(FunnelPlace place) {
        return switch (place) {
            case WITHIN -> "within";
            case ABOVE_INNER -> "above 95 %";
            case ABOVE_OUTER -> "ABOVE 99.8 %";
            case BELOW_INNER -> "below 95 %";
            case BELOW_OUTER -> "BELOW 99.8 %";
        };
    }

    private List<String> findings() {
        List<String> findings = new ArrayList<>();
        List<FunnelPoint> outside = funnel.outside();
        findings.add(
                outside.isEmpty()
                        ? "Every " + kind.word() + " lies within the 95 % limits."
                        : "Outside the limits: "
                                + outside.stream()
                                        .map(point -> point.group().name() + " (" + word(point.place()) + ")")
                                        .collect(Collectors.joining(", "))
                                + ". Of twenty, one lies outside the 95 % limits by chance.");
        findings.add("Not adjusted for what the patients brought with them: a " + kind.word()
                + " outside asks for a look at its cases, it proves nothing and blames nobody.");
        return findings;
    }
}
