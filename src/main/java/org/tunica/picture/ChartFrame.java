package org.tunica.picture;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/** Where values lie on the paper. */
record ChartFrame(double left, double right, double bottom, double top, Rectangle2D area) {

    Point2D at(double across, double up) {
        return new Point2D.Double(
                area.getX() + (across - left) / (right - left) * area.getWidth(),
                area.getMaxY() - (up - bottom) / (top - bottom) * area.getHeight());
    }

    /** A level line through the whole frame. */
    Line2D level(double up) {
        return new Line2D.Double(at(left, up), at(right, up));
    }

    ChartFrame on(Rectangle2D other) {
        return new ChartFrame(left, right, bottom, top, other);
    }
}
