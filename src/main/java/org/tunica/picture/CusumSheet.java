package org.tunica.picture;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.tunica.statistics.CusumDesign;
import org.tunica.statistics.CusumPoint;

/** The page of a chart of results: heading, chart, table, notes. */
final class CusumSheet implements ChartSheet {
    private static final int HEIGHT = 480;
    private static final double ROOM = 1.2;

    private final CusumChart chart;
    private final ChartWords words;

    CusumSheet(CusumChart chart) {
        this.chart = chart;
        this.words = chart.words();
    }

    @Override
    public ChartWords words() {
        return words;
    }

    @Override
    public void chart(Graphics2D graphics, Page page) {
        page.plot(plot(), HEIGHT);
        page.write("Solid line: worse. Dashed line: better. Triangle: signal. Small strokes at the foot: failures.");
    }

    private XYPlot plot() {
        List<CusumPoint> points = chart.cusum().points();
        CusumDesign design = chart.cusum().design();
        double top = ROOM * Math.max(design.worseLimit(), most(points, CusumPoint::worse));
        double bottom = -ROOM * Math.max(design.betterLimit(), most(points, point -> -point.better()));
        int last = Math.max(2, points.size());
        NumberAxis cases = Page.axis("cases in their order", 0, last);
        cases.setStandardTickUnits(NumberAxis.createIntegerTickUnits());
        NumberAxis evidence = Page.axis("evidence (up: worse, down: better)", bottom, top);
        return ChartDrawing.plot(
                cases,
                evidence,
                new CusumDrawing(chart, new ChartFrame(0, last, bottom, top, new Rectangle2D.Double())));
    }

    private static double most(List<CusumPoint> points, ToDoubleFunction<CusumPoint> value) {
        return points.stream().mapToDouble(value).max().orElseThrow();
    }
}
