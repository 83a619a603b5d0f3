package org.tunica.picture;

import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.XYPlot;

/** The page of curves: heading, curves, numbers at risk beneath the days of the axis, table, notes. */
final class SurvivalSheet implements ChartSheet {
    private static final int HEIGHT = 460;
    private static final double PERCENT = 100;
    private static final int SAMPLE_GAP = 14;
    private static final String TINT = "Tint: limits of the curve. ";
    private static final String STROKES = "Small strokes: days on which cases were last looked at.";
    /** A little room beyond the last day and above 100 %, else the rim of a curve is cut. */
    private static final double ROOM = 0.02;

    private final SurvivalChart chart;
    private final ChartWords words;
    private final double end;

    SurvivalSheet(SurvivalChart chart) {
        this.chart = chart;
        this.words = chart.words();
        this.end = Math.max(1, chart.lastDay()) * (1 + ROOM);
    }

    @Override
    public ChartWords words() {
        return words;
    }

    @Override
    public void chart(Graphics2D graphics, Page page) {
        Rectangle2D inside = page.plot(plot(), HEIGHT);
        atRisk(graphics, page, inside);
    }

    private XYPlot plot() {
        double from = chart.axisFromPercent();
        double top = PERCENT + ROOM * (PERCENT - from);
        String cut = from > 0 ? " (the axis starts at " + Figures.number(from) + " %)" : "";
        NumberAxis days = Page.lettered(new DayAxis("days after treatment", chart.axisDays()), 0, end);
        NumberAxis percent = Page.axis("still " + chart.free() + ", %" + cut, from, top);
        percent.setTickUnit(new NumberTickUnit((PERCENT - from) / 5));
        return ChartDrawing.plot(
                days, percent, new SurvivalDrawing(chart, new ChartFrame(0, end, from, top, new Rectangle2D.Double())));
    }

    private void atRisk(Graphics2D graphics, Page page, Rectangle2D inside) {
        word(
                graphics,
                chart.groups().size() > SurvivalDrawing.MOST_TINTED ? STROKES : TINT + STROKES,
                Page.MARGIN,
                page.line());
        word(graphics, "at risk:", Page.MARGIN, page.line());
        List<SurvivalChart.Group> groups = chart.groups();
        for (int i = 0; i < groups.size(); i++) {
            int y = page.line();
            word(graphics, chart.letter(i), Page.MARGIN, y);
            Pen.line(
                    graphics,
                    LineStyle.ofGroup(i),
                    List.of(
                            new Point2D.Double(Page.MARGIN + 13, y - 4),
                            new Point2D.Double(inside.getX() - SAMPLE_GAP, y - 4)));
            for (int day : DayAxis.roomy(chart.axisDays(), end, inside.getWidth())) {
                String number = chart.atRisk(i, day);
                double x = inside.getX() + inside.getWidth() * day / end;
                int half = graphics.getFontMetrics(Page.TEXT).stringWidth(number) / 2;
                word(graphics, number, (int) Math.round(x) - half, y);
            }
        }
    }

    private static void word(Graphics2D graphics, String text, int x, int y) {
        graphics.setFont(Page.TEXT);
        graphics.setColor(LineStyle.INK);
        graphics.drawString(text, x, y);
    }
}
