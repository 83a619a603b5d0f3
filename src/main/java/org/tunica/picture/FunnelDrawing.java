package org.tunica.picture;

import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.tunica.statistics.Funnel;
import org.tunica.statistics.FunnelLimits;
import org.tunica.statistics.FunnelPlace;
import org.tunica.statistics.FunnelPoint;

/** Groups by their size between limits that narrow, or periods one after the other, each between limits of its own. */
final class FunnelDrawing extends ChartDrawing {
    private static final double PERCENT = 100;
    private static final int CURVE_PIECES = 500;
    private static final double HALF_PERIOD = 0.38;
    private static final double DOT = 4.5;
    private static final double MARK = 8;
    private static final double BESIDE = 11;
    private static final LineStyle LINE = LineStyle.ofGroup(0);

    private final transient FunnelChart chart;

    FunnelDrawing(FunnelChart chart, ChartFrame values) {
        super(values);
        this.chart = chart;
    }

    @Override
    void draw(Graphics2D graphics, ChartFrame frame) {
        MapLabels labels = new MapLabels(graphics, frame.area());
        Line2D target = frame.level(PERCENT * chart.funnel().targetShare());
        Pen.stroke(graphics, Pen.HAIR, LineStyle.INK, target);
        List<FunnelPoint> points = chart.funnel().points();
        for (int i = 0; i < points.size(); i++) {
            labels.keepFree(Pen.polygon(place(frame, i), 4, MARK));
        }
        switch (chart.kind()) {
            case GROUPS -> groups(graphics, frame, labels);
            case PERIODS -> periods(graphics, frame);
        }
        for (int i = 0; i < points.size(); i++) {
            point(graphics, place(frame, i), points.get(i).place());
        }
        for (int i = 0; i < points.size(); i++) {
            FunnelPoint point = points.get(i);
            if (chart.kind() == FunnelChart.Kind.GROUPS || point.place() != FunnelPlace.WITHIN) {
                labels.beside(place(frame, i), point.group().name(), Pen.LABEL, LineStyle.INK, MARK);
            }
        }
        labels.along(
                List.of(target.getP1(), target.getP2()),
                "target " + chart.target(),
                Pen.SMALL,
                LineStyle.INK,
                0.92,
                BESIDE);
    }

    private Point2D place(ChartFrame frame, int index) {
        FunnelPoint point = chart.funnel().points().get(index);
        double across = switch (chart.kind()) {
            case GROUPS -> point.group().total();
            case PERIODS -> index;
        };
        return frame.at(across, PERCENT * point.group().share());
    }

    private void groups(Graphics2D graphics, ChartFrame frame, MapLabels labels) {
        for (double chance : new double[] {Funnel.OUTER_SHARE, Funnel.INNER_SHARE}) {
            boolean outer = chance == Funnel.OUTER_SHARE;
            List<Point2D> high = curve(frame, chance, FunnelLimits::highShare);
            List<Point2D> low = curve(frame, chance, FunnelLimits::lowShare);
            for (List<Point2D> curve : List.of(high, low)) {
                Pen.stroke(graphics, outer ? Pen.LIMIT : Pen.INNER_LIMIT, LineStyle.INK, MapFrame.path(curve));
            }
            labels.level(
                    List.of(high.get(high.size() * 4 / 5)),
                    Figures.tenths(PERCENT * chance) + " %",
                    Pen.SMALL,
                    LineStyle.INK,
                    BESIDE);
        }
    }

    private List<Point2D> curve(ChartFrame frame, double chance, ToDoubleFunction<FunnelLimits> limit) {
        int most = (int) frame.right();
        List<Point2D> points = new ArrayList<>();
        for (int total = 1; total <= most; total += Math.max(1, most / CURVE_PIECES)) {
            points.add(
                    frame.at(total, PERCENT * limit.applyAsDouble(chart.funnel().limits(total, chance))));
        }
        return points;
    }

    private void periods(Graphics2D graphics, ChartFrame frame) {
        List<FunnelPoint> points = chart.funnel().points();
        List<Point2D> course = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            FunnelPoint point = points.get(i);
            graphics.setColor(LINE.tint());
            graphics.fill(box(frame, i, point.inner()));
            Pen.stroke(graphics, Pen.INNER_LIMIT, LineStyle.INK, box(frame, i, point.inner()));
            Pen.stroke(graphics, Pen.LIMIT, LineStyle.INK, box(frame, i, point.outer()));
            course.add(place(frame, i));
        }
        Pen.line(graphics, LINE, course);
    }

    private static Rectangle2D box(ChartFrame frame, int index, FunnelLimits limits) {
        Rectangle2D box = new Rectangle2D.Double();
        box.setFrameFromDiagonal(
                frame.at(index - HALF_PERIOD, PERCENT * limits.lowShare()),
                frame.at(index + HALF_PERIOD, PERCENT * limits.highShare()));
        return box;
    }

    private static void point(Graphics2D graphics, Point2D at, FunnelPlace place) {
        switch (place) {
            case WITHIN ->
                Pen.mark(
                        graphics,
                        LINE.colour(),
                        new Ellipse2D.Double(at.getX() - DOT, at.getY() - DOT, 2 * DOT, 2 * DOT));
            case ABOVE_INNER -> Pen.mark(graphics, LineStyle.YELLOW, Pen.polygon(at, 3, MARK));
            case BELOW_INNER -> Pen.mark(graphics, LineStyle.YELLOW, Pen.polygon(at, 3, -MARK));
            case ABOVE_OUTER, BELOW_OUTER -> Pen.mark(graphics, LineStyle.VERMILLION, Pen.polygon(at, 4, MARK + 2));
        }
    }
}
