package org.tunica.drawing;

import java.util.List;
import org.tunica.knowledge.Knowledge;

/**
 * Where the borders of the three coats are drawn inside a wall. For the eye alone: nothing is computed from it.
 *
 * @param intimaShare share of the wall, from inside, 0 to 1
 * @param mediaShare share of the wall, 0 to 1; the rest is adventitia
 */
record WallCoats(double intimaShare, double mediaShare) {
    private static final String INTIMA = "wall.drawn.intima-share";
    private static final String MEDIA = "wall.drawn.media-share";

    /** The numbers read here. */
    static final List<String> IDS = List.of(INTIMA, MEDIA);

    WallCoats {
        if (!(intimaShare > 0 && mediaShare > 0 && intimaShare + mediaShare < 1)) {
            throw new IllegalArgumentException(INTIMA + " and " + MEDIA + " must leave room for the outer coat, got "
                    + intimaShare + " and " + mediaShare);
        }
    }

    static WallCoats of(Knowledge knowledge) {
        return new WallCoats(knowledge.value(INTIMA), knowledge.value(MEDIA));
    }
}
