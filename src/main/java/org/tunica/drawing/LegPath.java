package org.tunica.drawing;

import java.util.ArrayList;
import java.util.List;
import org.tunica.casefile.Segment;

/**
 * Where a vein is drawn on a right leg: points from groin to ankle in the coordinates of one view. The inner side of the leg
 * lies to the right from the front and to the left from behind; a left leg is its mirror image.
 */
final class LegPath {
    static final double GROIN_Y = 60;
    static final double KNEE_Y = 330;
    static final double ANKLE_Y = 590;

    private static final int PIECES = 10;

    /** A stretch of height from above to below. */
    record Stretch(double topY, double bottomY) {}

    /** A point of the drawing. */
    record Point(double x, double y) {}

    private LegPath() {}

    /** Whether a vein is seen from behind. */
    static boolean behind(Segment segment) {
        return switch (segment.vein()) {
            case SMALL_SAPHENOUS, THIGH_EXTENSION -> true;
            case GREAT_SAPHENOUS, ANTERIOR_ACCESSORY, POSTERIOR_ACCESSORY, RECURRENT_CHANNEL -> false;
            case TRIBUTARY, PERFORATOR -> segment.level() == Segment.Level.POPLITEAL;
        };
    }

    static Stretch stretch(Segment.Level level) {
        return switch (level) {
            case GROIN -> new Stretch(GROIN_Y, 130);
            case THIGH -> new Stretch(130, 290);
            case KNEE, POPLITEAL -> new Stretch(290, 370);
            case UPPER_CALF -> new Stretch(370, 440);
            case MID_CALF -> new Stretch(440, 510);
            case LOWER_CALF -> new Stretch(510, 565);
            case ANKLE -> new Stretch(565, ANKLE_Y + 12);
        };
    }

    /** The points of a segment of a right leg, from above to below. */
    static List<Point> of(Segment segment) {
        Stretch stretch = stretch(segment.level());
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= PIECES; i++) {
            double share = (double) i / PIECES;
            double y = stretch.topY() + share * (stretch.bottomY() - stretch.topY());
            points.add(new Point(x(segment.vein(), y) + winding(segment, share), y));
        }
        return points;
    }

    private static double x(Segment.Vein vein, double y) {
        return switch (vein) {
            case GREAT_SAPHENOUS, RECURRENT_CHANNEL, PERFORATOR -> trunk(y);
            case ANTERIOR_ACCESSORY -> trunk(y) - 34 * down(y, GROIN_Y, KNEE_Y) - 6;
            case POSTERIOR_ACCESSORY -> trunk(y) + 12;
            case TRIBUTARY -> trunk(y) - 22;
            case SMALL_SAPHENOUS -> 100;
            case THIGH_EXTENSION -> 100 + 26 * (1 - down(y, GROIN_Y, KNEE_Y));
        };
    }

    /** The great saphenous trunk: from the middle of the groin to the inner side of the knee, then before the ankle bone. */
    private static double trunk(double y) {
        return y < KNEE_Y ? 106 + 22 * down(y, GROIN_Y, KNEE_Y) : 128 - 13 * down(y, KNEE_Y, ANKLE_Y);
    }

    private static double down(double y, double topY, double bottomY) {
        return Math.min(1, Math.max(0, (y - topY) / (bottomY - topY)));
    }

    private static double winding(Segment segment, double share) {
        double swing = segment.course()
                .map(course -> switch (course) {
                    case STRAIGHT -> 0.0;
                    case WINDING -> 4.0;
                    case VERY_WINDING -> 8.0;
                })
                .orElse(0.0);
        return swing * Math.sin(share * 4 * Math.PI);
    }
}
