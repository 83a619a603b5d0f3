package org.tunica.picture;

/** A chart of outcomes drawn as SVG or PNG; needs no display. Widths as for a {@link WindowPicture}. */
public final class OutcomePicture {
    private final Canvas canvas;

    private OutcomePicture(Canvas canvas) {
        this.canvas = canvas;
    }

    /** How long something stays as it should. */
    public static OutcomePicture of(SurvivalChart chart, int widthPx) {
        return new OutcomePicture(new Canvas(new SurvivalSheet(chart), "shares free of an event over time", widthPx));
    }

    /** Results against what was predicted, case by case. */
    public static OutcomePicture of(CusumChart chart, int widthPx) {
        return new OutcomePicture(new Canvas(new CusumSheet(chart), "results against predictions", widthPx));
    }

    /** Groups or periods against a target. */
    public static OutcomePicture of(FunnelChart chart, int widthPx) {
        return new OutcomePicture(new Canvas(new FunnelSheet(chart), "shares against a target", widthPx));
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
