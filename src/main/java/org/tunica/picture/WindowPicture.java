package org.tunica.picture;

import org.tunica.physics.SegmentWindow;

/** A heat window drawn as SVG or PNG; needs no display. */
public final class WindowPicture {
    /** Narrowest picture in which the words can be read, px. */
    public static final int LEAST_WIDTH_PX = 500;

    /** Widest picture drawn, px. */
    public static final int MOST_WIDTH_PX = 4000;

    /** Width of a picture unless another is asked for, px. */
    public static final int USUAL_WIDTH_PX = 1000;

    private final Canvas canvas;

    private WindowPicture(Canvas canvas) {
        this.canvas = canvas;
    }

    /**
     * The picture of a window.
     *
     * @throws IllegalArgumentException for a width outside {@link #LEAST_WIDTH_PX} to {@link #MOST_WIDTH_PX}
     */
    public static WindowPicture of(SegmentWindow window, ChartWords words, int widthPx) {
        return new WindowPicture(new Canvas(new WindowSheet(window, words), "a heat window", widthPx));
    }

    /** PNG bytes. */
    public byte[] png() {
        return canvas.png();
    }

    /** SVG in UTF-8, its text kept as text. */
    public byte[] svg() {
        return canvas.svg();
    }
}
