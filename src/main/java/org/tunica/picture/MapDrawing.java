package org.tunica.picture;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.tunica.heat.Death;
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
    private static final String EQUATION = " J/cm = W x s/cm";
    private static final double MARK = 9;
    private static final double BESIDE = 13;
    private static final double ENERGY_LABEL = 0.6;
    private static final int PIECES = 60;

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
        energies().forEach(energy -> Pen.stroke(graphics, THIN, LineStyle.FAINT, MapFrame.path(energy(frame, energy))));
        ceilings(frame).forEach(ceiling -> Pen.stroke(graphics, CEILING, LineStyle.INK, MapFrame.path(ceiling.line())));
        for (WindowLine line : WindowLine.values()) {
            map.border(line).forEach(piece -> Pen.line(graphics, LineStyle.of(line), frame.points(piece)));
        }
        place(frame).ifPresent(at -> mark(graphics, at));
        labels(graphics, frame);
        graphics.setClip(before);
    }

    /** Within the ceilings and without harm: what kills at once, and what kills at once or later. */
    private void areas(Graphics2D graphics, MapFrame frame) {
        graphics.setColor(LineStyle.LATER_TINT);
        graphics.fill(harmlessLater(frame));
        graphics.setColor(LineStyle.AT_ONCE_TINT);
        graphics.fill(harmless(frame, WindowLine.DIES_AT_ONCE));
    }

    private Area harmlessLater(MapFrame frame) {
        Area later = harmless(frame, WindowLine.DIES_LATER);
        later.subtract(harmless(frame, WindowLine.DIES_AT_ONCE));
        return later;
    }

    /** Settings within the ceilings that reach what is wished and no harm. */
    Area harmless(MapFrame frame, WindowLine wished) {
        Area area = frame.reached(map, wished);
        area.intersect(
                frame.within(window.powerW().value(), window.pullbackSPerCm().value()));
        area.subtract(new Area(frame.upFrom(energy(frame, window.energyJPerCm().value()))));
        Stream.of(WindowLine.values())
                .filter(line -> !line.wished())
                .forEach(harm -> area.subtract(frame.reached(map, harm)));
        return area;
    }

    private List<Integer> energies() {
        double least = map.powerW().min() * map.pullbackSPerCm().min();
        double most = map.powerW().max() * map.pullbackSPerCm().max();
        return Arrays.stream(ENERGIES_J_PER_CM)
                .filter(energy -> energy > least
                        && energy < most
                        && energy != window.energyJPerCm().value())
                .boxed()
                .toList();
    }

    /** All settings of one energy inside the map, from low to high power. */
    private List<Point2D> energy(MapFrame frame, double energyJPerCm) {
        double fromW =
                Math.max(map.powerW().min(), energyJPerCm / map.pullbackSPerCm().max());
        double toW =
                Math.min(map.powerW().max(), energyJPerCm / map.pullbackSPerCm().min());
        List<Point2D> points = new ArrayList<>();
        for (int i = 0; i <= PIECES; i++) {
            double watt = fromW + (toW - fromW) * i / PIECES;
            points.add(frame.at(watt, energyJPerCm / watt));
        }
        return points;
    }

    /** A ceiling, where it runs and where on it the words should stand. */
    private record Ceiling(List<Point2D> line, String says, String origin, double wished) {}

    private List<Ceiling> ceilings(MapFrame frame) {
        double watt = window.powerW().value();
        double sPerCm = window.pullbackSPerCm().value();
        double energy = window.energyJPerCm().value();
        return List.of(
                new Ceiling(
                        List.of(
                                frame.at(watt, map.pullbackSPerCm().max()),
                                frame.at(watt, map.pullbackSPerCm().min())),
                        "ceiling " + Figures.number(window.powerW().value()) + " W",
                        window.powerW().origin(),
                        0.5),
                new Ceiling(
                        List.of(
                                frame.at(map.powerW().min(), sPerCm),
                                frame.at(map.powerW().max(), sPerCm)),
                        "ceiling " + Figures.number(window.pullbackSPerCm().value()) + " s/cm",
                        window.pullbackSPerCm().origin(),
                        0.75),
                new Ceiling(
                        energy(frame, energy),
                        "ceiling " + Figures.number(window.energyJPerCm().value()) + EQUATION,
                        window.energyJPerCm().origin(),
                        0.75));
    }

    private static void mark(Graphics2D graphics, Point2D at) {
        Path2D diamond = new Path2D.Double();
        diamond.moveTo(at.getX(), at.getY() - MARK);
        diamond.lineTo(at.getX() + MARK, at.getY());
        diamond.lineTo(at.getX(), at.getY() + MARK);
        diamond.lineTo(at.getX() - MARK, at.getY());
        diamond.closePath();
        graphics.setColor(LineStyle.YELLOW);
        graphics.fill(diamond);
        Pen.stroke(graphics, new BasicStroke(2), LineStyle.INK, diamond);
    }

    /** Where the setting proposed lies. */
    private Optional<Point2D> place(MapFrame frame) {
        return Figures.proposedPulled(window).map(pulled -> frame.at(pulled.powerW(), pulled.pullbackSPerCm()));
    }

    /** The most needed first: who comes late finds less room. */
    private void labels(Graphics2D graphics, MapFrame frame) {
        MapLabels labels = new MapLabels(graphics, frame.area());
        place(frame).ifPresent(at -> labels.beside(at, proposal(), LABEL, LineStyle.INK, MARK));
        List<Ceiling> ceilings = ceilings(frame);
        for (WindowLine line : WindowLine.values()) {
            longest(frame, line)
                    .ifPresent(points -> labels.along(
                            points, LineStyle.of(line).says(), LABEL, LineStyle.INK, wished(line), off(line)));
        }
        ceilings.forEach(ceiling -> ceiling(labels, ceiling));
        labels.inside(harmless(frame, WindowLine.DIES_AT_ONCE), "dies at once, no harm", SMALL, LineStyle.INK);
        labels.inside(harmlessLater(frame), "dies at once or later, no harm", SMALL, LineStyle.INK);
        for (int energy : energies()) {
            labels.along(energy(frame, energy), energy + EQUATION, SMALL, LineStyle.FAINT, ENERGY_LABEL, 0);
        }
    }

    /** Where it comes from stands beneath the map as well, so a crowded map names the ceiling alone. */
    private static void ceiling(MapLabels labels, Ceiling ceiling) {
        String[] sayings = {ceiling.says() + " (" + ceiling.origin() + ")", ceiling.says()};
        for (String says : sayings) {
            if (labels.along(ceiling.line(), says, SMALL, LineStyle.INK, ceiling.wished(), 0)) {
                return;
            }
        }
    }

    private String proposal() {
        Death death = window.proposed().orElseThrow().death();
        return (death == Death.NOT_THROUGH ? "nearest: " : "to consider: ")
                + Figures.pulled(Figures.proposedPulled(window).orElseThrow());
    }

    private Optional<List<Point2D>> longest(MapFrame frame, WindowLine line) {
        return map.border(line).stream()
                .max(Comparator.comparingInt(List::size))
                .map(frame::points);
    }

    /** Curves are hollow upwards, so beneath them is room; the char line often lies close above another. */
    private static double off(WindowLine line) {
        return line == WindowLine.CHAR ? BESIDE : -BESIDE;
    }

    /** Lines that run close together carry their labels at different places. */
    private static double wished(WindowLine line) {
        return switch (line) {
            case DIES_LATER, DIES_AT_ONCE -> 0.3;
            case PERFORATION, NERVE, SKIN -> 0.5;
            case CHAR -> 0.7;
        };
    }
}
