package org.tunica.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.text.TextUtils;
import org.jfree.chart.ui.RectangleInsets;
import org.tunica.heat.HeatWindow;
import org.tunica.heat.SettingAxis;
import org.tunica.heat.WindowLine;
import org.tunica.physics.SegmentWindow;

/** The page: title, map, key of the areas, table, notes; laid out on a fixed width and scaled by who draws it. */
final class WindowSheet {
    /** Width everything is laid out on. */
    static final int WIDTH = 1000;

    private static final int MARGIN = 24;
    private static final int MAP_HEIGHT = 600;
    /** Both margins, and room for a viewer whose letters run wider. */
    private static final int WRAP_ROOM = 3 * MARGIN;

    private static final int ROW = 19;
    private static final int LINE = 17;
    private static final Font TITLE = new Font(Font.SANS_SERIF, Font.BOLD, 19);
    private static final Font AXIS = new Font(Font.SANS_SERIF, Font.BOLD, 14);
    private static final Font TEXT = new Font(Font.SANS_SERIF, Font.PLAIN, 13);
    private static final Font HEAD = new Font(Font.SANS_SERIF, Font.BOLD, 13);

    static {
        // else the chart library draws upright words as outlines, which no reader of an SVG can search or hear
        TextUtils.setUseDrawRotatedStringWorkaround(false);
    }

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
            map(
                    graphics,
                    window.map().get(),
                    new Rectangle2D.Double(MARGIN / 2.0, y - 8, WIDTH - 1.5 * MARGIN, MAP_HEIGHT));
            y = key(graphics, window.map().get(), y + MAP_HEIGHT + 8);
        }
        y = table(graphics, paragraph(graphics, words.caption(), TEXT, y + LINE) + 8);
        for (String note : words.notes()) {
            y = paragraph(graphics, note, TEXT, y + 5);
        }
        return y + MARGIN - LINE;
    }

    private void map(Graphics2D graphics, HeatWindow map, Rectangle2D area) {
        XYPlot plot = new XYPlot(
                null,
                axis("power, W", map.powerW()),
                axis("pullback, s/cm (higher = slower)", map.pullbackSPerCm()),
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

    private int key(Graphics2D graphics, HeatWindow map, int y) {
        int x = swatch(graphics, MARGIN, y, LineStyle.AT_ONCE_TINT);
        x = word(graphics, "whole wall dies at once" + noneHere(map, WindowLine.DIES_AT_ONCE), x, y) + MARGIN;
        x = swatch(graphics, x, y, LineStyle.LATER_TINT);
        x = word(graphics, "at once or later" + noneHere(map, WindowLine.DIES_LATER), x, y) + MARGIN;
        word(graphics, "both without harm and within the ceilings", x, y);
        return y + LINE;
    }

    private String noneHere(HeatWindow map, WindowLine wished) {
        MapFrame frame =
                new MapFrame(map.powerW(), map.pullbackSPerCm(), new Rectangle2D.Double(0, 0, WIDTH, MAP_HEIGHT));
        return new MapDrawing(window, map).harmless(frame, wished).isEmpty() ? " (nowhere here)" : "";
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
        int[] columns = columns(graphics.getFontMetrics(HEAD));
        row(graphics, words.header(), HEAD, top, columns);
        graphics.setStroke(new BasicStroke(1));
        graphics.draw(new Line2D.Double(MARGIN, top + 5, WIDTH - MARGIN, top + 5));
        int y = top + ROW + 2;
        for (List<String> cells : words.rows()) {
            row(graphics, cells, TEXT, y, columns);
            y += ROW;
        }
        return y + 2;
    }

    /** Where each column starts: as wide as its widest cell, the room left shared out evenly. */
    private int[] columns(FontMetrics metrics) {
        int count = words.header().size();
        int[] widths = new int[count];
        for (int i = 0; i < count; i++) {
            int column = i;
            widths[i] = Stream.concat(Stream.of(words.header()), words.rows().stream())
                    .mapToInt(cells -> metrics.stringWidth(cells.get(column)))
                    .max()
                    .orElse(0);
        }
        int gap = (WIDTH - 2 * MARGIN - IntStream.of(widths).sum()) / count;
        int[] starts = new int[count];
        starts[0] = MARGIN;
        for (int i = 1; i < count; i++) {
            starts[i] = starts[i - 1] + widths[i - 1] + gap;
        }
        return starts;
    }

    private static void row(Graphics2D graphics, List<String> cells, Font font, int y, int[] columns) {
        graphics.setFont(font);
        for (int i = 0; i < cells.size(); i++) {
            graphics.drawString(cells.get(i), columns[i], y);
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
            if (!line.isEmpty() && metrics.stringWidth(line + " " + word) > WIDTH - WRAP_ROOM) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
