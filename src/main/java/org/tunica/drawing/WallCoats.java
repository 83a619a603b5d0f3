package org.tunica.drawing;

import java.util.List;
import org.tunica.knowledge.Knowledge;

/**
 * Where the borders of the three coats are drawn inside a wall, and how much of each coat a depth takes in. For the eye: no
 * scan shows these borders, and nothing is decided by them.
 *
 * @param intimaShare share of the wall, from inside, 0 to 1
 * @param mediaShare share of the wall, 0 to 1; the rest is adventitia
 */
public record WallCoats(double intimaShare, double mediaShare) {
    private static final String INTIMA = "wall.drawn.intima-share";
    private static final String MEDIA = "wall.drawn.media-share";

    /** The numbers read here. */
    static final List<String> IDS = List.of(INTIMA, MEDIA);

    /**
     * How much of each coat.
     *
     * @param intimaShare share of the intima, 0 to 1
     * @param mediaShare share of the media, 0 to 1
     * @param adventitiaShare share of the adventitia, 0 to 1
     */
    public record Taken(double intimaShare, double mediaShare, double adventitiaShare) {}

    public WallCoats {
        if (!(intimaShare > 0 && mediaShare > 0 && intimaShare + mediaShare < 1)) {
            throw new IllegalArgumentException(INTIMA + " and " + MEDIA + " must leave room for the outer coat, got "
                    + intimaShare + " and " + mediaShare);
        }
    }

    /** The borders as they are drawn. */
    public static WallCoats of(Knowledge knowledge) {
        return new WallCoats(knowledge.value(INTIMA), knowledge.value(MEDIA));
    }

    /** How much of each coat lies within a depth from the inner face, in walls. */
    public Taken within(double depthPerWall) {
        double outside = intimaShare + mediaShare;
        return new Taken(
                share(depthPerWall, 0, intimaShare),
                share(depthPerWall, intimaShare, outside),
                share(depthPerWall, outside, 1));
    }

    private static double share(double depthPerWall, double from, double to) {
        return Math.max(0, Math.min(1, (depthPerWall - from) / (to - from)));
    }
}
