package org.tunica.picture;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import org.tunica.statistics.FreeShare;
import org.tunica.statistics.KaplanMeier;
import org.tunica.statistics.SurvivalStep;

/** Step curves with their limits as a tint behind them, a small stroke for every day on which cases were last looked at. */
final class SurvivalDrawing extends ChartDrawing {
    private static final double PERCENT = 100;
    /** Limits of more curves would hide each other. */
    static final int MOST_TINTED = 2;

    private static final double STROKE = 6;
    private static final double BESIDE = 15;
    private static final double[] LABEL_PLACES = {0.6, 0.75, 0.45, 0.9, 0.3, 0.15};
    private static final BasicStroke ROOM = new BasicStroke(5);

    private final transient SurvivalChart chart;

    SurvivalDrawing(SurvivalChart chart, ChartFrame values) {
        super(values);
        this.chart = chart;
    }

    @Override
    void draw(Graphics2D graphics, ChartFrame frame) {
        List<SurvivalChart.Group> groups = chart.groups();
        MapLabels labels = new MapLabels(graphics, frame.area());
        for (int i = 0; i < groups.size() && groups.size() <= MOST_TINTED; i++) {
            graphics.setColor(LineStyle.ofGroup(i).tint());
            graphics.fill(limits(frame, groups.get(i).curve()));
        }
        for (int i = 0; i < groups.size(); i++) {
            List<Point2D> curve = steps(frame, groups.get(i).curve(), FreeShare::freeShare);
            Pen.line(graphics, LineStyle.ofGroup(i), curve);
            censored(graphics, frame, groups.get(i).curve());
            labels.keepFree(ROOM.createStrokedShape(MapFrame.path(curve)));
        }
        for (int i = 0; i < groups.size(); i++) {
            String says = chart.letter(i) + " " + groups.get(i).name();
            labels.level(places(frame, groups.get(i).curve()), says, Pen.LABEL, LineStyle.INK, BESIDE);
        }
    }

    /** From the start, level until the next day with an event, then down. */
    private static List<Point2D> steps(ChartFrame frame, KaplanMeier curve, ToDoubleFunction<FreeShare> reading) {
        List<Point2D> points = new ArrayList<>();
        double before = PERCENT;
        points.add(frame.at(0, before));
        for (SurvivalStep step : curve.steps()) {
            points.add(frame.at(step.daysAfter(), before));
            before = PERCENT * reading.applyAsDouble(step.free());
            points.add(frame.at(step.daysAfter(), before));
        }
        return points;
    }

    /** Between the limits; where the log-log scale has none the tint has no width. */
    private static Path2D limits(ChartFrame frame, KaplanMeier curve) {
        List<Point2D> low = steps(frame, curve, free -> free.lowShare().orElse(free.freeShare()));
        List<Point2D> high = steps(frame, curve, free -> free.highShare().orElse(free.freeShare()));
        List<Point2D> around = new ArrayList<>(high);
        for (int i = low.size() - 1; i >= 0; i--) {
            around.add(low.get(i));
        }
        Path2D path = MapFrame.path(around);
        path.closePath();
        return path;
    }

    private static void censored(Graphics2D graphics, ChartFrame frame, KaplanMeier curve) {
        for (SurvivalStep step : curve.steps()) {
            if (step.censored() > 0) {
                Point2D at = frame.at(step.daysAfter(), PERCENT * step.free().freeShare());
                Pen.stroke(
                        graphics,
                        new BasicStroke(1.6f),
                        LineStyle.INK,
                        new Line2D.Double(at.getX(), at.getY() - STROKE, at.getX(), at.getY() + STROKE));
            }
        }
    }

    /** Places on the curve where its name could stand. */
    private static List<Point2D> places(ChartFrame frame, KaplanMeier curve) {
        return DoubleStream.of(LABEL_PLACES)
                .mapToObj(share -> {
                    int day = (int) Math.round(share * curve.lastDaysAfter());
                    return frame.at(
                            day, PERCENT * curve.at(day).orElseThrow().free().freeShare());
                })
                .toList();
    }
}
