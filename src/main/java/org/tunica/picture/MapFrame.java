package org.tunica.picture;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.tunica.heat.HeatWindow;
import org.tunica.heat.SettingAxis;
import org.tunica.heat.WindowLine;

/** Where settings lie on the paper: power to the right, slower pull-back upwards. */
record MapFrame(SettingAxis powerW, SettingAxis pullbackSPerCm, Rectangle2D area) {

    Point2D at(double watt, double sPerCm) {
        double right = (watt - powerW.min()) / (powerW.max() - powerW.min());
        double up = (sPerCm - pullbackSPerCm.min()) / (pullbackSPerCm.max() - pullbackSPerCm.min());
        return new Point2D.Double(area.getX() + right * area.getWidth(), area.getMaxY() - up * area.getHeight());
    }

    Point2D at(HeatWindow.Node node) {
        return at(node.powerW(), node.pullbackSPerCm());
    }

    List<Point2D> points(List<HeatWindow.Node> piece) {
        return piece.stream().map(this::at).toList();
    }

    static Path2D path(List<Point2D> points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points.get(0).getX(), points.get(0).getY());
        points.stream().skip(1).forEach(point -> path.lineTo(point.getX(), point.getY()));
        return path;
    }

    /** All settings that reach a line: from its border up to the slow edge of the map. */
    Area reached(HeatWindow map, WindowLine line) {
        Area reached = new Area();
        for (List<HeatWindow.Node> piece : map.border(line)) {
            reached.add(new Area(upFrom(points(piece))));
        }
        return reached;
    }

    /** Everything above a curve that runs from left to right. */
    Path2D upFrom(List<Point2D> curve) {
        Path2D path = path(curve);
        path.lineTo(curve.get(curve.size() - 1).getX(), area.getY());
        path.lineTo(curve.get(0).getX(), area.getY());
        path.closePath();
        return path;
    }

    /** All settings up to a power and a pull-back. */
    Area within(double highestW, double slowestSPerCm) {
        Point2D corner = at(highestW, slowestSPerCm);
        double top = Math.max(area.getY(), corner.getY());
        double width = Math.min(area.getMaxX(), corner.getX()) - area.getX();
        return new Area(new Rectangle2D.Double(area.getX(), top, width, area.getMaxY() - top));
    }
}
