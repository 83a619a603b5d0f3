package org.tunica.heat;

/**
 * How finely a slice is cut and stepped; numerics only, no clinical number.
 *
 * @param stepFactor 1 halves the time steps of 2; 2 for maps and the calibrated figures, 1 for one displayed case, 0.5
 *     when charring or perforation matters
 * @param filmCells shells in the fluid film
 * @param wallCells shells in the wall
 * @param growth ratio of neighbouring shells outside the wall
 * @param steamReruns how often a laser run is repeated with the steam of the run before; 0 leaves steam out
 * @param untilCool whether a run ends once the source is off and nothing is warm enough to count; a point far away that
 *     is still warming, below all that counts, is then read a little too cool
 */
public record Fineness(
        double stepFactor, int filmCells, int wallCells, double growth, int steamReruns, boolean untilCool) {
    /** The steps at which the model was calibrated: 74 shells, within 0.01 mm of the fine answer. */
    public static final Fineness CALIBRATED = new Fineness(2, 4, 26, 1.12, 1);

    /** 46 shells, for maps. */
    public static final Fineness COARSE = new Fineness(2, 4, 13, 1.20, 1);

    /** 46 shells, longer steps, only while something is warm: for searching and for draws. */
    public static final Fineness DRAWN = new Fineness(3, 4, 13, 1.20, 1, true);

    /** Runs that follow the slice to the end. */
    public Fineness(double stepFactor, int filmCells, int wallCells, double growth, int steamReruns) {
        this(stepFactor, filmCells, wallCells, growth, steamReruns, false);
    }

    public Fineness {
        Checks.positive("stepFactor", stepFactor);
        Checks.positive("filmCells", filmCells);
        Checks.positive("wallCells", wallCells);
        Checks.within("growth", growth, 1.0001, 2);
        Checks.notNegative("steamReruns", steamReruns);
    }

    /** The same cut with other time steps. */
    public Fineness withStepFactor(double factor) {
        return new Fineness(factor, filmCells, wallCells, growth, steamReruns, untilCool);
    }

    /** The same with another number of steam reruns. */
    public Fineness withSteamReruns(int reruns) {
        return new Fineness(stepFactor, filmCells, wallCells, growth, reruns, untilCool);
    }
}
