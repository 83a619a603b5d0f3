package org.tunica.picture;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.XYPlot;

/** The page of groups or periods against a target: heading, chart, table, notes. */
final class FunnelSheet implements ChartSheet {
    private static final int HEIGHT = 480;
    private static final int MOST_LEVEL_NAMES = 8;
    private static final double BEYOND_LARGEST = 1.08;

    private final FunnelChart chart;
    private final ChartWords words;

    FunnelSheet(FunnelChart chart) {
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
        page.write(
                "Dotted: 95 % limits. Dashed: 99.8 % limits. Dot: within. Triangle: outside 95 %. Diamond: outside 99.8 %.");
    }

    private XYPlot plot() {
        double low = chart.axisFromPercent();
        double high = chart.axisToPercent();
        // room for a mark that lies on the edge
        double room = (high - low) / 25;
        NumberAxis across = switch (chart.kind()) {
            case GROUPS -> sizes();
            case PERIODS -> periods();
        };
        ChartFrame frame = new ChartFrame(
                across.getLowerBound(), across.getUpperBound(), low - room, high + room, new Rectangle2D.Double());
        return ChartDrawing.plot(
                across, Page.axis("share, %", low - room, high + room), new FunnelDrawing(chart, frame));
    }

    private NumberAxis sizes() {
        int largest = chart.funnel().points().stream()
                .mapToInt(point -> point.group().total())
                .max()
                .orElseThrow();
        NumberAxis axis = Page.axis("cases of the group", 0, Math.ceil(BEYOND_LARGEST * largest));
        axis.setStandardTickUnits(NumberAxis.createIntegerTickUnits());
        return axis;
    }

    private NumberAxis periods() {
        String[] names = chart.funnel().points().stream()
                .map(point -> point.group().name())
                .toArray(String[]::new);
        SymbolAxis axis = new SymbolAxis("period", names);
        axis.setGridBandsVisible(false);
        axis.setVerticalTickLabels(names.length > MOST_LEVEL_NAMES);
        return Page.lettered(axis, -0.5, names.length - 0.5);
    }
}
