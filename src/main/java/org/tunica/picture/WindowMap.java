package org.tunica.picture;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import org.tunica.heat.HeatWindow;
import org.tunica.heat.SettingAxis;
import org.tunica.physics.SegmentWindow;

/**
 * The map of a heat window alone, and where its settings lie in the drawing, so that a point can be laid over it.
 *
 * @param svg shapes and text
 * @param powerW to the right
 * @param pullbackSPerCm upwards
 * @param leftPx left edge of the inside of the map
 * @param topPx its upper edge
 * @param widthPx its width
 * @param heightPx its height
 */
public record WindowMap(
        String svg,
        SettingAxis powerW,
        SettingAxis pullbackSPerCm,
        double leftPx,
        double topPx,
        double widthPx,
        double heightPx) {

    /** The map of a window; none for a device that is not drawn back. */
    public static Optional<WindowMap> of(SegmentWindow window, ChartWords words) {
        return window.map().map(map -> of(window, map, words));
    }

    private static WindowMap of(SegmentWindow window, HeatWindow map, ChartWords words) {
        Canvas bare = new Canvas(new BareSheet(new WindowSheet(window, words)), "a heat window", Page.WIDTH);
        Rectangle2D inside = WindowSheet.inside(window, map, words);
        return new WindowMap(
                new String(bare.shapes(), StandardCharsets.UTF_8),
                map.powerW(),
                map.pullbackSPerCm(),
                inside.getX(),
                inside.getY(),
                inside.getWidth(),
                inside.getHeight());
    }

    /** Whether a setting lies on the map. */
    public boolean shows(double watt, double sPerCm) {
        return watt >= powerW.min()
                && watt <= powerW.max()
                && sPerCm >= pullbackSPerCm.min()
                && sPerCm <= pullbackSPerCm.max();
    }

    /** The drawing without a cross. */
    public String unmarked() {
        return svg.substring(svg.indexOf("<svg"));
    }

    /** The drawing with a cross on a setting, which a script may move; it is hidden where the map does not reach. */
    public String marked(double watt, double sPerCm) {
        Point2D at = new MapFrame(powerW, pullbackSPerCm, new Rectangle2D.Double(leftPx, topPx, widthPx, heightPx))
                .at(watt, sPerCm);
        String cross = String.format(
                Locale.ROOT,
                "<g id=\"marker\" visibility=\"%s\" transform=\"translate(%.1f %.1f)\" fill=\"none\">"
                        + "<path d=\"M-22 0H22M0 -22V22\" stroke=\"#ffffff\" stroke-width=\"7\"/>"
                        + "<circle r=\"12\" stroke=\"#ffffff\" stroke-width=\"7\"/>"
                        + "<path d=\"M-22 0H22M0 -22V22\" stroke=\"#000000\" stroke-width=\"2.5\"/>"
                        + "<circle r=\"12\" stroke=\"#000000\" stroke-width=\"2.5\"/></g></svg>",
                shows(watt, sPerCm) ? "visible" : "hidden",
                at.getX(),
                at.getY());
        return unmarked().replaceFirst("</svg>\\s*$", "") + cross;
    }
}
