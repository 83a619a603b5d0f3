package org.tunica.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.tunica.heat.HeatWindow;
import org.tunica.heat.SettingAxis;
import org.tunica.heat.WindowLine;
import org.tunica.physics.SegmentWindow;

/** The page of a heat window: title, map, key of the areas, table, notes. */
final class WindowSheet implements ChartSheet {
    private static final int MAP_HEIGHT = 600;

    private final SegmentWindow window;
    private final ChartWords words;

    WindowSheet(SegmentWindow window, ChartWords words) {
        this.window = window;
        this.words = words;
    }

    @Override
    public ChartWords words() {
        return words;
    }

    @Override
    public void chart(Graphics2D graphics, Page page) {
        window.map().ifPresent(map -> {
            page.plot(map(map), MAP_HEIGHT);
            key(graphics, map, page.line());
        });
    }

    /** Where the inside of the map lies when nothing stands above it; nothing is drawn. */
    static Rectangle2D inside(SegmentWindow window, HeatWindow map, ChartWords words) {
        Graphics2D nowhere = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
        Rectangle2D inside = new Page(nowhere).plot(new WindowSheet(window, words).map(map), MAP_HEIGHT);
        nowhere.dispose();
        return inside;
    }

    private XYPlot map(HeatWindow map) {
        XYPlot plot = new XYPlot(
                null,
                axis("power, W", map.powerW()),
                axis("pullback, s/cm (higher = slower)", map.pullbackSPerCm()),
                null);
        plot.addAnnotation(new MapDrawing(window, map));
        return plot;
    }

    private static NumberAxis axis(String label, SettingAxis values) {
        NumberAxis axis = Page.axis(label, values.min(), values.max());
        axis.setStandardTickUnits(NumberAxis.createIntegerTickUnits());
        return axis;
    }

    private void key(Graphics2D graphics, HeatWindow map, int y) {
        int x = swatch(graphics, Page.MARGIN, y, LineStyle.AT_ONCE_TINT);
        x = word(graphics, "whole wall dies at once" + noneHere(map, WindowLine.DIES_AT_ONCE), x, y) + Page.MARGIN;
        x = swatch(graphics, x, y, LineStyle.LATER_TINT);
        x = word(graphics, "at once or later" + noneHere(map, WindowLine.DIES_LATER), x, y) + Page.MARGIN;
        word(graphics, "both without harm and within the ceilings", x, y);
    }

    private String noneHere(HeatWindow map, WindowLine wished) {
        MapFrame frame =
                new MapFrame(map.powerW(), map.pullbackSPerCm(), new Rectangle2D.Double(0, 0, Page.WIDTH, MAP_HEIGHT));
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
        graphics.setFont(Page.TEXT);
        graphics.setColor(LineStyle.INK);
        graphics.drawString(text, x, y);
        return x + graphics.getFontMetrics().stringWidth(text);
    }
}
