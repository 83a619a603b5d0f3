package org.tunica.picture;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.tunica.statistics.CusumPoint;
import org.tunica.statistics.CusumSide;
import org.tunica.statistics.CusumSignal;

/** Both charts, their limits, a triangle at each signal, a small stroke at the foot for each failure. */
final class CusumDrawing extends ChartDrawing {
    private static final double TRIANGLE = 8;
    private static final double FAILURE = 9;
    private static final double BESIDE = 11;
    private static final double LABEL_AT = 0.2;
    private static final BasicStroke ROOM = new BasicStroke(4);

    private final transient CusumChart chart;

    CusumDrawing(CusumChart chart, ChartFrame values) {
        super(values);
        this.chart = chart;
    }

    @Override
    void draw(Graphics2D graphics, ChartFrame frame) {
        double worseLimit = chart.cusum().design().worseLimit();
        double betterLimit = chart.cusum().design().betterLimit();
        Pen.stroke(graphics, Pen.HAIR, LineStyle.FAINT, frame.level(0));
        Pen.stroke(graphics, Pen.LIMIT, LineStyle.INK, frame.level(worseLimit));
        Pen.stroke(graphics, Pen.LIMIT, LineStyle.INK, frame.level(-betterLimit));
        failures(graphics, frame);
        MapLabels labels = new MapLabels(graphics, frame.area());
        for (CusumSide side : CusumSide.values()) {
            for (List<Point2D> piece : pieces(frame, side)) {
                Pen.line(graphics, LineStyle.of(side), piece);
                labels.keepFree(ROOM.createStrokedShape(MapFrame.path(piece)));
            }
        }
        List<CusumSignal> signals = chart.cusum().signals();
        for (CusumSignal signal : signals) {
            double size = signal.side() == CusumSide.WORSE ? TRIANGLE : -TRIANGLE;
            Shape triangle = Pen.polygon(place(frame, signal), 3, size);
            Pen.mark(graphics, LineStyle.YELLOW, triangle);
            labels.keepFree(triangle);
        }
        for (CusumSignal signal : signals) {
            String says = "case " + signal.caseNumber() + ", since " + signal.sinceCaseNumber();
            labels.beside(place(frame, signal), says, Pen.LABEL, LineStyle.INK, TRIANGLE);
        }
        limit(labels, frame, worseLimit, "limit " + Figures.number(worseLimit) + ": worse than predicted");
        limit(labels, frame, -betterLimit, "limit -" + Figures.number(betterLimit) + ": better than predicted");
    }

    private Point2D place(ChartFrame frame, CusumSignal signal) {
        CusumPoint point = chart.cusum().points().get(signal.caseNumber() - 1);
        return frame.at(signal.caseNumber(), value(signal.side()).applyAsDouble(point));
    }

    /** The chart in pieces, each from 0 to the end or to a signal. */
    private List<List<Point2D>> pieces(ChartFrame frame, CusumSide side) {
        ToDoubleFunction<CusumPoint> value = value(side);
        List<List<Point2D>> pieces = new ArrayList<>();
        List<Point2D> piece = new ArrayList<>(List.of(frame.at(0, 0)));
        for (CusumPoint point : chart.cusum().points()) {
            piece.add(frame.at(point.caseNumber(), value.applyAsDouble(point)));
            if (signalled(point, side)) {
                pieces.add(piece);
                piece = new ArrayList<>(List.of(frame.at(point.caseNumber(), 0)));
            }
        }
        if (piece.size() > 1) {
            pieces.add(piece);
        }
        return pieces;
    }

    private static ToDoubleFunction<CusumPoint> value(CusumSide side) {
        return switch (side) {
            case WORSE -> CusumPoint::worse;
            case BETTER -> CusumPoint::better;
        };
    }

    private static boolean signalled(CusumPoint point, CusumSide side) {
        return point.signals().stream().anyMatch(signal -> signal.side() == side);
    }

    private void failures(Graphics2D graphics, ChartFrame frame) {
        double foot = frame.area().getMaxY();
        for (CusumPoint point : chart.cusum().points()) {
            if (point.outcome().failed()) {
                double x = frame.at(point.caseNumber(), 0).getX();
                Pen.stroke(graphics, Pen.HAIR, LineStyle.INK, new Line2D.Double(x, foot - FAILURE, x, foot));
            }
        }
    }

    private static void limit(MapLabels labels, ChartFrame frame, double limit, String says) {
        Line2D line = frame.level(limit);
        labels.along(
                List.of(line.getP1(), line.getP2()),
                says,
                Pen.SMALL,
                LineStyle.INK,
                LABEL_AT,
                Math.signum(limit) * BESIDE);
    }
}
