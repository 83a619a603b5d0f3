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
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.text.TextUtils;
import org.jfree.chart.ui.RectangleInsets;

/** Paper of a fixed width that is written from the top down. */
final class Page {
    /** Width everything is laid out on. */
    static final int WIDTH = 1000;

    static final int MARGIN = 24;
    static final int LINE = 17;
    static final Font TEXT = new Font(Font.SANS_SERIF, Font.PLAIN, 13);
    private static final Font TITLE = new Font(Font.SANS_SERIF, Font.BOLD, 19);
    private static final Font AXIS = new Font(Font.SANS_SERIF, Font.BOLD, 14);
    private static final Font HEAD = new Font(Font.SANS_SERIF, Font.BOLD, 13);
    private static final int ROW = 19;
    /** Both margins, and room for a viewer whose letters run wider. */
    private static final int WRAP_ROOM = 3 * MARGIN;

    static {
        // else the chart library draws upright words as outlines, which no reader of an SVG can search or hear
        TextUtils.setUseDrawRotatedStringWorkaround(false);
    }

    private final Graphics2D graphics;
    private int y = MARGIN;

    Page(Graphics2D graphics) {
        this.graphics = graphics;
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    /** Title and subtitle. */
    void heading(ChartWords words) {
        y += TITLE.getSize();
        paragraph(words.title(), TITLE);
        y += 2;
        paragraph(words.subtitle(), TEXT);
    }

    /** A plot without grid or frame of its own, and where its inside came to lie. */
    Rectangle2D plot(XYPlot plot, int height) {
        Rectangle2D area = new Rectangle2D.Double(MARGIN / 2.0, y - 8, WIDTH - 1.5 * MARGIN, height);
        plot.setBackgroundPaint(Color.WHITE);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinesVisible(false);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        JFreeChart chart = new JFreeChart(null, TITLE, plot, false);
        chart.setBackgroundPaint(Color.WHITE);
        ChartRenderingInfo info = new ChartRenderingInfo(null);
        chart.draw(graphics, area, info);
        y += height + 8;
        return info.getPlotInfo().getDataArea();
    }

    /** An axis in the lettering of the page. */
    static NumberAxis axis(String label, double low, double high) {
        return lettered(new NumberAxis(label), low, high);
    }

    static NumberAxis lettered(NumberAxis axis, double low, double high) {
        axis.setRange(low, high);
        axis.setLabelFont(AXIS);
        axis.setTickLabelFont(TEXT);
        axis.setLabelPaint(LineStyle.INK);
        axis.setTickLabelPaint(LineStyle.INK);
        return axis;
    }

    /** One line of text. */
    void write(String says) {
        graphics.setFont(TEXT);
        graphics.setColor(LineStyle.INK);
        graphics.drawString(says, MARGIN, line());
    }

    /** One line that is written by whoever asks, from the base line given. */
    int line() {
        int here = y;
        y += LINE;
        return here;
    }

    /** Where the page ends without caption, table and notes. */
    int bottom() {
        return y + MARGIN - LINE;
    }

    /** Caption, table and notes. */
    int ending(ChartWords words) {
        y += LINE;
        paragraph(words.caption(), TEXT);
        y += 8;
        table(words);
        for (String note : words.notes()) {
            y += 5;
            paragraph(note, TEXT);
        }
        return y + MARGIN - LINE;
    }

    private void table(ChartWords words) {
        int[] columns = columns(words, graphics.getFontMetrics(HEAD));
        row(words.header(), HEAD, columns);
        graphics.setStroke(new BasicStroke(1));
        graphics.draw(new Line2D.Double(MARGIN, y + 5, WIDTH - MARGIN, y + 5));
        y += ROW + 2;
        for (List<String> cells : words.rows()) {
            row(cells, TEXT, columns);
            y += ROW;
        }
        y += 2;
    }

    /** Where each column starts: as wide as its widest cell, the room left shared out evenly. */
    private static int[] columns(ChartWords words, FontMetrics metrics) {
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

    private void row(List<String> cells, Font font, int[] columns) {
        graphics.setFont(font);
        for (int i = 0; i < cells.size(); i++) {
            graphics.drawString(cells.get(i), columns[i], y);
        }
    }

    private void paragraph(String text, Font font) {
        graphics.setFont(font);
        graphics.setColor(LineStyle.INK);
        for (String line : wrapped(text, graphics.getFontMetrics())) {
            graphics.drawString(line, MARGIN, y);
            y += font.getSize() + 4;
        }
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
