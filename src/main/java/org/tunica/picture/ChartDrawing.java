package org.tunica.picture;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;

/** Everything inside the axes of a chart of outcomes. */
abstract class ChartDrawing extends AbstractXYAnnotation {
    private final transient ChartFrame values;

    /** @param values the ends of both axes; where they lie on the paper is told when it is drawn */
    ChartDrawing(ChartFrame values) {
        this.values = values;
    }

    /** A plot of this drawing, with room to the right for half of the last number beneath the axis. */
    static XYPlot plot(NumberAxis across, NumberAxis up, ChartDrawing drawing) {
        XYPlot plot = new XYPlot(null, across, up, null);
        plot.setInsets(new RectangleInsets(4, 8, 4, 24));
        plot.addAnnotation(drawing);
        return plot;
    }

    abstract void draw(Graphics2D graphics, ChartFrame frame);

    @Override
    public final void draw(
            Graphics2D graphics,
            XYPlot plot,
            Rectangle2D area,
            ValueAxis across,
            ValueAxis up,
            int rendererIndex,
            PlotRenderingInfo info) {
        Shape before = graphics.getClip();
        graphics.clip(area);
        draw(graphics, values.on(area));
        graphics.setClip(before);
    }
}
