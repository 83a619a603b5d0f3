package org.tunica.picture;

import java.awt.Graphics2D;

/** Something drawn on a {@link Page}. */
interface Sheet {
    /** Draws the whole page and tells its height. */
    int draw(Graphics2D graphics);

    /** What stands on it in words. */
    ChartWords words();
}
