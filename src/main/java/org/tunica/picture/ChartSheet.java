package org.tunica.picture;

import java.awt.Graphics2D;

/** A page with one chart between its heading and its table. */
interface ChartSheet extends Sheet {
    /** Draws the chart with its axes and the key to its signs. */
    void chart(Graphics2D graphics, Page page);

    @Override
    default int draw(Graphics2D graphics) {
        Page page = new Page(graphics);
        page.heading(words());
        chart(graphics, page);
        return page.ending(words());
    }
}
