package org.tunica.picture;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** An axis of days with a tick at each day of a list, those left out that would touch the one before. */
final class DayAxis extends NumberAxis {
    private static final double LEAST_GAP_PX = 34;

    private final List<Integer> days;

    DayAxis(String label, List<Integer> days) {
        super(label);
        this.days = days;
    }

    /** The days that find room on a length of paper. */
    static List<Integer> roomy(List<Integer> days, double lastDay, double lengthPx) {
        List<Integer> shown = new ArrayList<>();
        for (int day : days) {
            if (shown.isEmpty() || (day - shown.get(shown.size() - 1)) / lastDay * lengthPx >= LEAST_GAP_PX) {
                shown.add(day);
            }
        }
        return shown;
    }

    @Override
    @SuppressWarnings("rawtypes")
    public List refreshTicks(Graphics2D graphics, AxisState state, Rectangle2D area, RectangleEdge edge) {
        return roomy(days, getUpperBound(), area.getWidth()).stream()
                .map(day -> new NumberTick(day, String.valueOf(day), TextAnchor.TOP_CENTER, TextAnchor.CENTER, 0))
                .toList();
    }
}
