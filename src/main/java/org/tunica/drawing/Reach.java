package org.tunica.drawing;

/**
 * How deep something reaches from the inner face of the wall.
 *
 * @param lowMm the point that nine draws in ten pass; as deep as the middle where nothing was drawn
 * @param middleMm in the middle draw
 * @param highMm the point that one draw in ten passes
 */
public record Reach(double lowMm, double middleMm, double highMm) {
    public Reach {
        if (!(0 <= lowMm && lowMm <= middleMm && middleMm <= highMm)) {
            throw new IllegalArgumentException(
                    "a reach goes from low to high, got " + lowMm + ", " + middleMm + ", " + highMm);
        }
    }

    /** A depth of which no spread is known. */
    static Reach exactly(double mm) {
        return new Reach(mm, mm, mm);
    }

    /** Whether a spread is known. */
    boolean spreads() {
        return highMm > lowMm;
    }

    Reach times(double factor) {
        return new Reach(lowMm * factor, middleMm * factor, highMm * factor);
    }
}
