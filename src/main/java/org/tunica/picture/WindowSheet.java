package org.tunica.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;
import org.tunica.heat.HeatWindow;
import org.tunica.heat.SettingAxis;
import org.tunica.physics.SegmentWindow;

/** The page: title, map, key of the areas, table, notes; laid out on a fixed width and scaled by who draws it. */
final class WindowSheet {
    /** Width everything is laid out on. */
    static final int WIDTH = 1000;

    private static final int MARGIN = 24;
    private static final int MAP_HEIGHT = 600;
    private static final int ROW = 19;
    private static final int LINE = 17;
    private static final Font TITLE = new Font(Font.SANS_SERIF, Font.BOLD, 19);
    private static final Font AXIS = new Font(Font.SANS_SERIF, Font.BOLD, 14);
    private static final Font TEXT = new Font(Font.SANS_SERIF, Font.PLAIN, 13);
    private static final Font HEAD = new Font(Font.SANS_SERIF, Font.BOLD, 13);

    private final SegmentWindow window;
    private final WindowWords words;

    WindowSheet(SegmentWindow window, WindowWords words) {
        this.window = window;
        this.words = words;
    }

    /** Draws the page and tells its height. */
    int draw(Graphics2D graphics) {
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.setColor(LineStyle.INK);
        int y = MARGIN + TITLE.getSize();
        y = paragraph(graphics, words.title(), TITLE, y);
        y = paragraph(graphics, words.subtitle(), TEXT, y + 2);
        if (window.map().isPresent()) {
            map(graphics, window.map().get(), new Rectangle2D.Double(0, y - 8, WIDTH, MAP_HEIGHT));
            y = key(graphics, y + MAP_HEIGHT + 8);
        }
        y = table(graphics, y + LINE);
        for (String note : words.notes()) {
            y = paragraph(graphics, note, TEXT, y + 5);
        }
        return y + MARGIN - LINE;
    }

    private void map(Graphics2D graphics, HeatWindow map, Rectangle2D area) {
        XYPlot plot = new XYPlot(
                null,
                axis("power, W", map.powerW()),
                axis("pullback, s/cm  (higher = slower)", map.pullbackSPerCm()),
                null);
        plot.setBackgroundPaint(Color.WHITE);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinesVisible(false);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.addAnnotation(new MapDrawing(window, map));
        JFreeChart chart = new JFreeChart(null, TITLE, plot, false);
        chart.setBackgroundPaint(Color.WHITE);
        chart.draw(graphics, area);
    }

    private static NumberAxis axis(String label, SettingAxis values) {
        NumberAxis axis = new NumberAxis(label);
        axis.setRange(values.min(), values.max());
        axis.setStandardTickUnits(NumberAxis.createIntegerTickUnits());
        axis.setLabelFont(AXIS);
        axis.setTickLabelFont(TEXT);
        axis.setLabelPaint(LineStyle.INK);
        axis.setTickLabelPaint(LineStyle.INK);
        return axis;
    }

    private static int key(Graphics2D graphics, int y) {
        int x = swatch(graphics, MARGIN, y, MapDrawing.tint(LineStyle.GREEN, MapDrawing.AT_ONCE_ALPHA));
        x = word(graphics, "darker area: whole wall dies at once, no harm, within the ceilings", x, y) + MARGIN;
        x = swatch(graphics, x, y, MapDrawing.tint(LineStyle.BLUE, MapDrawing.LATER_ALPHA));
        word(graphics, "paler area: the same, at once or later", x, y);
        return y + LINE;
    }

    private static int swatch(Graphics2D graphics, int x, int y, Color colour) {
        Rectangle2D box = new Rectangle2D.Double(x, y - 12, 22, 14);
        graphics.setColor(colour);
        graphics.fill(box);
        graphics.setColor(LineStyle.INK);
        graphics.setStroke(new BasicStroke(1));
        graphics.draw(box);
        return x + 28;
    }

    private static int word(Graphics2D graphics, String text, int x, int y) {
        graphics.setFont(TEXT);
        graphics.setColor(LineStyle.INK);
        graphics.drawString(text, x, y);
        return x + graphics.getFontMetrics().stringWidth(text);
    }

    private int table(Graphics2D graphics, int top) {
        int columns = words.header().size();
        int step = (WIDTH - 2 * MARGIN) / columns;
        row(graphics, words.header(), HEAD, top, step);
        graphics.setStroke(new BasicStroke(1));
        graphics.draw(new java.awt.geom.Line2D.Double(MARGIN, top + 5, WIDTH - MARGIN, top + 5));
        int y = top + ROW + 2;
        for (List<String> cells : words.rows()) {
            row(graphics, cells, TEXT, y, step);
            y += ROW;
        }
        return y + 2;
    }

    private static void row(Graphics2D graphics, List<String> cells, Font font, int y, int step) {
        graphics.setFont(font);
        for (int i = 0; i < cells.size(); i++) {
            graphics.drawString(cells.get(i), MARGIN + i * step, y);
        }
    }

    private static int paragraph(Graphics2D graphics, String text, Font font, int top) {
        graphics.setFont(font);
        graphics.setColor(LineStyle.INK);
        int y = top;
        for (String line : wrapped(text, graphics.getFontMetrics())) {
            graphics.drawString(line, MARGIN, y);
            y += font.getSize() + 4;
        }
        return y;
    }

    private static List<String> wrapped(String text, FontMetrics metrics) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            if (!line.isEmpty() && metrics.stringWidth(line + " " + word) > WIDTH - 2 * MARGIN) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
