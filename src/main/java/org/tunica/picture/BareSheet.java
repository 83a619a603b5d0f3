package org.tunica.picture;

import java.awt.Graphics2D;

/** The chart of a page alone, for a document that has its heading, table and notes in its own words. */
record BareSheet(ChartSheet whole) implements Sheet {
    @Override
    public int draw(Graphics2D graphics) {
        Page page = new Page(graphics);
        whole.chart(graphics, page);
        return page.bottom();
    }

    @Override
    public ChartWords words() {
        return whole.words();
    }
}
