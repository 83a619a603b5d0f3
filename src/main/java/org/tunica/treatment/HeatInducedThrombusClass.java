package org.tunica.treatment;

/** Class of a clot that grew from a heated vein towards or into the deep vein (S-0043, read at second hand). */
public enum HeatInducedThrombusClass {
    /** Up to the junction; the deep lumen is free. */
    I,
    /** Into the deep vein, under half of its lumen. */
    II,
    /** Exactly half: the text read defines no class, so ask; the safer reading is {@link #III}. */
    UNDEFINED,
    /** Over half of the deep lumen, not all of it. */
    III,
    /** The deep vein is occluded. */
    IV;

    private static final double HALF_PERCENT = 50;
    private static final double ALL_PERCENT = 100;

    /** The class by the share of the deep lumen that the clot fills, per cent, 0 to 100. */
    public static HeatInducedThrombusClass of(double deepLumenPercent) {
        Checked.within("deepLumenPercent", deepLumenPercent, 0, ALL_PERCENT);
        if (deepLumenPercent == 0) {
            return I;
        }
        if (deepLumenPercent == ALL_PERCENT) {
            return IV;
        }
        int side = Double.compare(deepLumenPercent, HALF_PERCENT);
        return side == 0 ? UNDEFINED : side < 0 ? II : III;
    }
}
