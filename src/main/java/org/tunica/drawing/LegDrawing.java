package org.tunica.drawing;

import java.util.List;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;

/** The schematic leg as SVG: two views side by side, each segment as thick as it is wide, with its words. */
final class LegDrawing {
    /** How large the corners below are drawn: so that the words beside them, which do not shrink, can be read. */
    private static final double SCALE = 0.62;

    private static final double VIEW = 444;
    private static final double LEG = 200;
    private static final double HEIGHT = 480;
    private static final double LABELS = 130;
    private static final double LEAST_GAP = 34;

    /** Room above the leg for the name of the view. */
    private static final double TITLE = 16;

    /** Pixels a millimetre of lumen is drawn wide. */
    private static final double PX_PER_MM = 1.1;

    private static final double UNKNOWN_WIDTH = 2;
    private static final Svg.Look SKIN = Svg.Look.outlined("leg", "#FAF6F0", "#777777");
    private static final Svg.Look VEIN = Svg.Look.outlined("vein", "none", "#0072B2");
    private static final Svg.Look VEIN_UNKNOWN = Svg.Look.dashed("vein unknown", "#0072B2", "2 5");
    private static final Svg.Look LEADER = Svg.Look.dashed("leader", "#777777", "1 3");

    private static final Svg.Look SIGN = Svg.Look.outlined("sign", "none", "#AAAAAA");

    /** Corners of a right leg from the front, its inner side to the right, in pixels before scaling. */
    private static final double[][] OUTLINE = {
        {30, 24},
        {26, 90},
        {36, 200},
        {54, 300},
        {56, 345},
        {44, 420},
        {60, 520},
        {74, 590},
        {56, 640},
        {66, 654},
        {112, 656},
        {128, 640},
        {122, 590},
        {136, 520},
        {152, 420},
        {138, 345},
        {142, 300},
        {160, 200},
        {166, 110},
        {150, 84},
        {90, 40}
    };

    private final LegMap map;

    LegDrawing(LegMap map) {
        this.map = map;
    }

    String svg() {
        String says = "Schematic " + map.side() + " leg. " + String.join(" ", map.sentences());
        List<Segment> before = segments(false);
        List<Segment> behind = segments(true);
        boolean both = !before.isEmpty() && !behind.isEmpty();
        return Svg.of("leg-map", both ? 2 * VIEW : VIEW, HEIGHT, says, svg -> {
            if (!before.isEmpty()) {
                view(svg, 0, "from the front", before);
            }
            if (!behind.isEmpty()) {
                view(svg, both ? VIEW : 0, "from behind", behind);
            }
            note(svg, HEIGHT - 22, "Schematic, thickness as the lumen recorded; no map of this person.");
            note(svg, HEIGHT - 6, "Dotted: width not recorded.");
        });
    }

    private static void note(Svg svg, double y, String says) {
        svg.text("note", Svg.Anchor.START, 0, y, says);
    }

    private List<Segment> segments(boolean behind) {
        return map.limb().segments().stream()
                .filter(segment -> LegPath.behind(segment) == behind)
                .toList();
    }

    private void view(Svg svg, double left, String from, List<Segment> segments) {
        boolean mirrored = (map.limb().side() == Limb.Side.LEFT) != from.endsWith("behind");
        svg.text("view", Svg.Anchor.START, left, 16, map.side() + " leg, " + from);
        svg.path(SKIN, outline(left, mirrored), 1.4);
        svg.path(SIGN, knee(left, mirrored, from.endsWith("behind")), 1.2);
        double free = 0;
        for (Segment segment : segments.stream()
                .sorted((a, b) -> Double.compare(middle(a).y(), middle(b).y()))
                .toList()) {
            free = segment(svg, segment, left, mirrored, free);
        }
    }

    private double segment(Svg svg, Segment segment, double left, boolean mirrored, double free) {
        StringBuilder path = new StringBuilder();
        for (LegPath.Point point : LegPath.of(segment)) {
            path.append(path.length() == 0 ? "M" : "L")
                    .append(Svg.px(x(point.x(), left, mirrored)))
                    .append(' ')
                    .append(Svg.px(y(point.y())));
        }
        boolean known = segment.lumenDiameterMm().isPresent();
        double width = known ? segment.lumenDiameterMm().getAsDouble() * PX_PER_MM : UNKNOWN_WIDTH;
        svg.path(known ? VEIN : VEIN_UNKNOWN, path.toString(), width);
        LegPath.Point at = middle(segment);
        double y = Math.max(y(at.y()), free + LEAST_GAP);
        svg.line(LEADER, x(at.x(), left, mirrored), y(at.y()), left + LABELS - 4, y - 4);
        svg.text("segment", Svg.Anchor.START, left + LABELS, y, map.label(segment));
        svg.text("choice", Svg.Anchor.START, left + LABELS, y + 15, map.says().getOrDefault(segment.ref(), ""));
        return y;
    }

    private static LegPath.Point middle(Segment segment) {
        List<LegPath.Point> points = LegPath.of(segment);
        return points.get(points.size() / 2);
    }

    private static double x(double x, double left, boolean mirrored) {
        return left + SCALE * (mirrored ? LEG - x : x);
    }

    private static double y(double y) {
        return SCALE * y + TITLE;
    }

    /** The outline of a right leg from the front, its inner side to the right: round curves through the corners' middles. */
    private static String outline(double left, boolean mirrored) {
        StringBuilder path = new StringBuilder();
        int corners = OUTLINE.length;
        for (int i = 0; i <= corners; i++) {
            double[] at = OUTLINE[i % corners];
            double[] next = OUTLINE[(i + 1) % corners];
            String between = Svg.px(x((at[0] + next[0]) / 2, left, mirrored)) + " " + Svg.px(y((at[1] + next[1]) / 2));
            path.append(i == 0 ? "M" : "Q" + Svg.px(x(at[0], left, mirrored)) + " " + Svg.px(y(at[1])) + " ")
                    .append(between);
        }
        return path.append('Z').toString();
    }

    /** What tells front from back: the kneecap, or the crease behind the knee. */
    private static String knee(double left, boolean mirrored, boolean behind) {
        String from = Svg.px(x(78, left, mirrored)) + " ";
        String to = Svg.px(x(118, left, mirrored)) + " ";
        String middle = Svg.px(x(98, left, mirrored)) + " ";
        return behind
                ? "M" + from + Svg.px(y(334)) + "Q" + middle + Svg.px(y(342)) + " " + to + Svg.px(y(334))
                : "M" + from + Svg.px(y(326)) + "Q" + middle + Svg.px(y(296)) + " " + to + Svg.px(y(326)) + "Q" + middle
                        + Svg.px(y(362)) + " " + from + Svg.px(y(326)) + "Z";
    }
}
