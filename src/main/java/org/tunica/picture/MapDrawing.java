package org.tunica.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.tunica.heat.HeatSetting;
import org.tunica.heat.HeatWindow;
import org.tunica.heat.WindowLine;
import org.tunica.physics.SegmentWindow;

/** Everything inside the axes: areas, lines of equal energy, ceilings, lines of the window, the setting proposed. */
final class MapDrawing extends AbstractXYAnnotation {
    private static final int[] ENERGIES_J_PER_CM = {20, 40, 60, 80, 100, 120, 150, 200, 300, 400, 600, 800};
    private static final Font LABEL = new Font(Font.SANS_SERIF, Font.BOLD, 13);
    private static final Font SMALL = new Font(Font.SANS_SERIF, Font.PLAIN, 12);
    private static final BasicStroke THIN = new BasicStroke(1, BasicStroke.CAP_BUTT, 0, 1, new float[] {1, 3}, 0);
    private static final BasicStroke CEILING = new BasicStroke(1.4f, BasicStroke.CAP_BUTT, 0, 1, new float[] {9, 7}, 0);
    private static final double MARK = 9;

    private final transient SegmentWindow window;
    private final transient HeatWindow map;

    MapDrawing(SegmentWindow window, HeatWindow map) {
        this.window = window;
        this.map = map;
    }

    @Override
    public void draw(
            Graphics2D graphics,
            XYPlot plot,
            Rectangle2D area,
            ValueAxis powerAxis,
            ValueAxis pullbackAxis,
            int rendererIndex,
            PlotRenderingInfo info) {
        MapFrame frame = new MapFrame(map.powerW(), map.pullbackSPerCm(), area);
        Shape before = graphics.getClip();
        graphics.clip(area);
        areas(graphics, frame);
        energies().forEach(energy -> stroke(graphics, THIN, LineStyle.FAINT, MapFrame.path(energy(frame, energy))));
        ceilings(frame).forEach(line -> stroke(graphics, CEILING, LineStyle.INK, MapFrame.path(line)));
        for (WindowLine line : WindowLine.values()) {
            map.border(line).forEach(piece -> line(graphics, LineStyle.of(line), frame.points(piece)));
        }
        mark(graphics, frame);
        labels(graphics, frame);
        graphics.setClip(before);
    }

    /** Within the ceilings and without harm: what kills at once, and what kills at once or later. */
    private void areas(Graphics2D graphics, MapFrame frame) {
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        Area atOnce = harmless(frame, WindowLine.DIES_AT_ONCE);
        Area later = harmless(frame, WindowLine.DIES_LATER);
        later.subtract(atOnce);
        graphics.setColor(tint(LineStyle.BLUE, LATER_ALPHA));
        graphics.fill(later);
        graphics.setColor(tint(LineStyle.GREEN, AT_ONCE_ALPHA));
        graphics.fill(atOnce);
    }

    static final int LATER_ALPHA = 50;
    static final int AT_ONCE_ALPHA = 105;

    static Color tint(Color colour, int alpha) {
        return new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), alpha);
    }

    private Area harmless(MapFrame frame, WindowLine wished) {
        Area area = frame.reached(map, wished);
        area.intersect(
                frame.within(window.powerW().value(), window.pullbackSPerCm().value()));
        Stream.of(WindowLine.values())
                .filter(line -> !line.wished())
                .forEach(harm -> area.subtract(frame.reached(map, harm)));
        return area;
    }

    private List<Integer> energies() {
        double least = map.powerW().min() * map.pullbackSPerCm().min();
        double most = map.powerW().max() * map.pullbackSPerCm().max();
        return java.util.Arrays.stream(ENERGIES_J_PER_CM)
                .filter(energy -> energy > least && energy < most)
                .boxed()
                .toList();
    }

    /** All settings of one energy inside the map, from low to high power. */
    private List<Point2D> energy(MapFrame frame, int energyJPerCm) {
        double fromW =
                Math.max(map.powerW().min(), energyJPerCm / map.pullbackSPerCm().max());
        double toW =
                Math.min(map.powerW().max(), energyJPerCm / map.pullbackSPerCm().min());
        List<Point2D> points = new ArrayList<>();
        int pieces = 60;
        for (int i = 0; i <= pieces; i++) {
            double watt = fromW + (toW - fromW) * i / pieces;
            points.add(frame.at(watt, energyJPerCm / watt));
        }
        return points;
    }

    private List<List<Point2D>> ceilings(MapFrame frame) {
        double watt = window.powerW().value();
        double sPerCm = window.pullbackSPerCm().value();
        return List.of(
                List.of(
                        frame.at(watt, map.pullbackSPerCm().max()),
                        frame.at(watt, map.pullbackSPerCm().min())),
                List.of(
                        frame.at(map.powerW().min(), sPerCm),
                        frame.at(map.powerW().max(), sPerCm)));
    }

    private static void line(Graphics2D graphics, LineStyle style, List<Point2D> points) {
        Path2D path = MapFrame.path(points);
        stroke(graphics, style.rim(), LineStyle.INK, path);
        stroke(graphics, style.stroke(), style.colour(), path);
    }

    private static void stroke(Graphics2D graphics, BasicStroke stroke, Color colour, Shape shape) {
        graphics.setStroke(stroke);
        graphics.setColor(colour);
        graphics.draw(shape);
    }

    private void mark(Graphics2D graphics, MapFrame frame) {
        if (!(window.proposed().setting() instanceof HeatSetting.Pulled pulled)) {
            return;
        }
        Point2D at = frame.at(pulled.powerW(), pulled.pullbackSPerCm());
        Path2D diamond = new Path2D.Double();
        diamond.moveTo(at.getX(), at.getY() - MARK);
        diamond.lineTo(at.getX() + MARK, at.getY());
        diamond.lineTo(at.getX(), at.getY() + MARK);
        diamond.lineTo(at.getX() - MARK, at.getY());
        diamond.closePath();
        graphics.setColor(LineStyle.YELLOW);
        graphics.fill(diamond);
        stroke(graphics, new BasicStroke(2), LineStyle.INK, diamond);
    }

    private void labels(Graphics2D graphics, MapFrame frame) {
        MapLabels labels = new MapLabels(graphics, frame.area());
        if (window.proposed().setting() instanceof HeatSetting.Pulled pulled) {
            Point2D at = frame.at(pulled.powerW(), pulled.pullbackSPerCm());
            labels.keepFree(new Rectangle2D.Double(at.getX() - MARK, at.getY() - MARK, 2 * MARK, 2 * MARK));
            labels.beside(at, proposal() + Figures.pulled(pulled), LABEL, LineStyle.INK, MARK + 2);
        }
        for (WindowLine line : WindowLine.values()) {
            longest(frame, line)
                    .ifPresent(points ->
                            labels.along(points, LineStyle.of(line).says(), LABEL, LineStyle.INK, wished(line), 0));
        }
        List<List<Point2D>> ceilings = ceilings(frame);
        labels.along(ceilings.get(0), ceiling(window.powerW(), " W"), SMALL, LineStyle.INK, 0.25, 0);
        labels.along(ceilings.get(1), ceiling(window.pullbackSPerCm(), " s/cm"), SMALL, LineStyle.INK, 0.8, 0);
        energies()
                .forEach(energy -> labels.along(
                        energy(frame, energy), energy + " J/cm = W x s/cm", SMALL, LineStyle.FAINT, 0.6, 0));
    }

    private String proposal() {
        return window.proposed().killsAsWished() && window.proposed().staysWithinLimits()
                ? "to consider: "
                : "nearest: ";
    }

    private static String ceiling(SegmentWindow.Ceiling ceiling, String unit) {
        return "ceiling " + Figures.number(ceiling.value()) + unit + ": " + ceiling.origin();
    }

    private java.util.Optional<List<Point2D>> longest(MapFrame frame, WindowLine line) {
        return map.border(line).stream()
                .max(Comparator.comparingInt(List::size))
                .map(frame::points);
    }

    /** Lines that run close together carry their labels at different places. */
    private static double wished(WindowLine line) {
        return switch (line) {
            case DIES_LATER -> 0.3;
            case DIES_AT_ONCE -> 0.3;
            case CHAR -> 0.7;
            case PERFORATION -> 0.5;
            case NERVE -> 0.5;
            case SKIN -> 0.5;
        };
    }
}
