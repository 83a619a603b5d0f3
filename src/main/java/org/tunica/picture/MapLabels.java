package org.tunica.picture;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Writes labels along lines where no other label stands. */
final class MapLabels {
    private static final Color PAPER = new Color(255, 255, 255, 225);
    private static final int TRIES = 24;
    private static final int INSIDE_TRIES = 15;
    private static final double GAP = 3;

    private final Graphics2D graphics;
    private final Rectangle2D area;
    private final List<Area> taken = new ArrayList<>();

    MapLabels(Graphics2D graphics, Rectangle2D area) {
        this.graphics = graphics;
        this.area = area;
    }

    /** A place on the paper and the slope there, as an angle. */
    private record Place(Point2D at, double angle) {}

    /**
     * Writes a label on a line, as near to a wished place as there is room; not at all when there is none.
     *
     * @param wished share of the length of the line, 0 to 1
     * @param off how far above the line in px, below when negative; 0 writes across it
     * @return whether there was room
     */
    boolean along(List<Point2D> line, String text, Font font, Color colour, double wished, double off) {
        for (int i = 0; i < TRIES; i++) {
            // wished place first, then alternately further to either side
            double share = wished + (i % 2 == 0 ? 1 : -1) * ((i + 1) / 2) / (double) TRIES;
            if (share > 0 && share < 1 && write(place(line, share), text, font, colour, off)) {
                return true;
            }
        }
        return false;
    }

    /** Keeps labels off a line or a mark. */
    void keepFree(Shape shape) {
        taken.add(new Area(shape));
    }

    /** Writes a level label above or below the first of some places that has room; not at all when none has. */
    void level(List<Point2D> places, String text, Font font, Color colour, double off) {
        for (Point2D place : places) {
            if (write(new Place(place, 0), text, font, colour, off)
                    || write(new Place(place, 0), text, font, colour, -off)) {
                return;
            }
        }
    }

    /** Writes a level label beside a mark, on the side where there is room, and keeps the mark free. */
    void beside(Point2D mark, String text, Font font, Color colour, double size) {
        taken.add(new Area(new Rectangle2D.Double(mark.getX() - size, mark.getY() - size, 2 * size, 2 * size)));
        double right = size + GAP + width(text, font) / 2;
        double down = size + GAP + font.getSize2D();
        double[][] ways = {{right, 0}, {-right, 0}, {0, -down}, {0, down}, {right, down}, {right, -down}};
        for (double[] way : ways) {
            Point2D centre = new Point2D.Double(mark.getX() + way[0], mark.getY() + way[1]);
            if (write(new Place(centre, 0), text, font, colour, 0)) {
                return;
            }
        }
    }

    /** Writes a level label in an area, near its middle; not at all when there is no room. */
    void inside(Area shape, String text, Font font, Color colour) {
        Rectangle2D bounds = shape.getBounds2D();
        Rectangle2D box = new Rectangle2D.Double(0, 0, width(text, font), font.getSize2D() + GAP);
        for (int i = 0; i < INSIDE_TRIES * INSIDE_TRIES; i++) {
            Point2D centre = new Point2D.Double(
                    bounds.getX() + bounds.getWidth() * middleOut(i % INSIDE_TRIES),
                    bounds.getY() + bounds.getHeight() * middleOut(i / INSIDE_TRIES));
            box.setFrameFromCenter(
                    centre.getX(),
                    centre.getY(),
                    centre.getX() + box.getWidth() / 2,
                    centre.getY() + box.getHeight() / 2);
            if (shape.contains(box) && write(new Place(centre, 0), text, font, colour, 0)) {
                return;
            }
        }
    }

    /** 0.5 first, then alternately further to either side. */
    private static double middleOut(int i) {
        return 0.5 + (i % 2 == 0 ? 1 : -1) * ((i + 1) / 2) / (double) INSIDE_TRIES;
    }

    private double width(String text, Font font) {
        return graphics.getFontMetrics(font).stringWidth(text) + 2 * GAP;
    }

    private boolean write(Place place, String text, Font font, Color colour, double off) {
        double width = width(text, font);
        double height = font.getSize2D() + GAP;
        AffineTransform there = AffineTransform.getTranslateInstance(
                place.at().getX(), place.at().getY());
        there.rotate(place.angle());
        there.translate(0, -off);
        Rectangle2D box = new Rectangle2D.Double(-width / 2, -height / 2, width, height);
        Area covers = new Area(there.createTransformedShape(box));
        if (!area.contains(covers.getBounds2D()) || taken.stream().anyMatch(other -> meet(covers, other))) {
            return false;
        }
        taken.add(covers);
        AffineTransform before = graphics.getTransform();
        graphics.transform(there);
        graphics.setColor(PAPER);
        graphics.fill(box);
        graphics.setColor(colour);
        graphics.setFont(font);
        graphics.drawString(text, (float) (GAP - width / 2), (float) (height / 2 - GAP));
        graphics.setTransform(before);
        return true;
    }

    private static boolean meet(Area one, Area other) {
        Area both = new Area(one);
        both.intersect(other);
        return !both.isEmpty();
    }

    private static Place place(List<Point2D> line, double share) {
        double left = share * length(line);
        for (int i = 1; i < line.size(); i++) {
            Point2D from = line.get(i - 1);
            Point2D to = line.get(i);
            double piece = from.distance(to);
            if (left <= piece && piece > 0) {
                double along = left / piece;
                return new Place(
                        new Point2D.Double(
                                from.getX() + along * (to.getX() - from.getX()),
                                from.getY() + along * (to.getY() - from.getY())),
                        Math.atan2(to.getY() - from.getY(), to.getX() - from.getX()));
            }
            left -= piece;
        }
        return new Place(line.get(line.size() - 1), 0);
    }

    private static double length(List<Point2D> line) {
        double length = 0;
        for (int i = 1; i < line.size(); i++) {
            length += line.get(i - 1).distance(line.get(i));
        }
        return length;
    }
}
