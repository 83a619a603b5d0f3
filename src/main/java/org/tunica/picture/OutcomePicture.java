package org.tunica.picture;

import java.nio.charset.StandardCharsets;

/** A chart of outcomes drawn as SVG or PNG; needs no display. Widths as for a {@link WindowPicture}. */
public final class OutcomePicture {
    private final Canvas canvas;
    private final Canvas bare;

    private OutcomePicture(ChartSheet sheet, String kind, int widthPx) {
        this.canvas = new Canvas(sheet, kind, widthPx);
        this.bare = new Canvas(new BareSheet(sheet), kind, widthPx);
    }

    /** How long something stays as it should. */
    public static OutcomePicture of(SurvivalChart chart, int widthPx) {
        return new OutcomePicture(new SurvivalSheet(chart), "shares free of an event over time", widthPx);
    }

    /** Results against what was predicted, case by case. */
    public static OutcomePicture of(CusumChart chart, int widthPx) {
        return new OutcomePicture(new CusumSheet(chart), "results against predictions", widthPx);
    }

    /** Groups or periods against a target. */
    public static OutcomePicture of(FunnelChart chart, int widthPx) {
        return new OutcomePicture(new FunnelSheet(chart), "shares against a target", widthPx);
    }

    /** The chart alone as SVG of shapes and text, without heading, table and notes: for a document that has these itself. */
    public String chartAlone() {
        return new String(bare.shapes(), StandardCharsets.UTF_8);
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
