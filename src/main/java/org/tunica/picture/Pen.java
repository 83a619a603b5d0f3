package org.tunica.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.List;

/** Strokes that several charts draw alike. */
final class Pen {
    static final Font LABEL = new Font(Font.SANS_SERIF, Font.BOLD, 13);
    static final Font SMALL = new Font(Font.SANS_SERIF, Font.PLAIN, 12);
    static final BasicStroke HAIR = new BasicStroke(1.2f);
    static final BasicStroke LIMIT = new BasicStroke(1.4f, BasicStroke.CAP_BUTT, 0, 1, new float[] {9, 7}, 0);
    static final BasicStroke INNER_LIMIT = new BasicStroke(1.4f, BasicStroke.CAP_BUTT, 0, 1, new float[] {3, 4}, 0);

    private Pen() {}

    /** A line with a dark rim, so that a light colour can be seen on white. */
    static void line(Graphics2D graphics, LineStyle style, List<Point2D> points) {
        Path2D path = MapFrame.path(points);
        stroke(graphics, style.rim(), LineStyle.INK, path);
        stroke(graphics, style.stroke(), style.colour(), path);
    }

    static void stroke(Graphics2D graphics, BasicStroke stroke, Color colour, Shape shape) {
        graphics.setStroke(stroke);
        graphics.setColor(colour);
        graphics.draw(shape);
    }

    /** A filled shape with a dark edge. */
    static void mark(Graphics2D graphics, Color colour, Shape shape) {
        graphics.setColor(colour);
        graphics.fill(shape);
        stroke(graphics, new BasicStroke(1.6f), LineStyle.INK, shape);
    }

    /** A polygon around a place, the first corner straight up or, with a negative size, straight down. */
    static Shape polygon(Point2D at, int corners, double size) {
        Path2D shape = new Path2D.Double();
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * i / corners;
            double x = at.getX() + size * Math.sin(angle);
            double y = at.getY() - size * Math.cos(angle);
            if (i == 0) {
                shape.moveTo(x, y);
            } else {
                shape.lineTo(x, y);
            }
        }
        shape.closePath();
        return shape;
    }
}
