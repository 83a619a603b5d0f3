package org.tunica.heat;

import java.util.Arrays;

/**
 * Heat and water of one slice of vein, stepped in time; the kernel of the heat model and its reusable workspace.
 *
 * <pre>
 * rc dT/dt = (1/r) d/dr( r k dT/dr ) + Q - w (T - Tbody) - L m      dW/dt = -m
 * k = kDry + f (kWet - kDry),  rc likewise,  f = W/W0
 * </pre>
 *
 * T temperature (C), W water (kg/m3), Q source (W/m3), w perfusion (W/m3K), L latent heat (J/kg), m vapour (kg/m3s).
 * Vapour leaves at once and only where T stands at the boiling point; dry shells heat up to a cap, heat above it is
 * booked as removed tissue. Cell-centred finite volumes per metre of vein, implicit Euler.
 *
 * <p>Method: (1) the conductance between two shell centres is exact for steady shells; (2) shells that boiled and still
 * hold water are pinned at the boiling point inside the implicit solve, and a pinned shell that loses heat is released
 * and the solve repeated until none is (latent heat by active set; lagging it by one step mis-states drying by a factor
 * of two); (3) properties are those of the start of the step.
 *
 * <p>Bioheat form: Pennes, J Appl Physiol 1948;1:93 (from memory). Not thread-safe: one instance per thread. Nothing is
 * allocated after {@link #begin}.
 */
final class Bioheat {
    /** No step has this length: nothing is solved yet. */
    private static final double NONE = -1;

    private RadialGrid grid;
    private Medium medium;
    private int n;
    private double[] temperatureC = new double[0];
    private double[] beforeC;
    private double[] water;
    private double[] wetness;
    private double[] conductivity;
    private double[] storage;
    private double[] conductance;
    private double[] sourceWPerM;
    private double[] pinnedWPerM;
    private double[] inverse;
    private double[] upper;
    private double[] right;
    private boolean[] boils;
    private boolean[] pinned;
    private boolean[] solvedPinned;
    private boolean dried;
    private double solvedDtS;
    private double solvedInnerWPerMK;

    private double innerWPerMK;
    private double innerC;
    private double innerWPerM;
    private boolean innerCondenses;
    private double undeliveredWPerM;

    private double sourceJPerM;
    private double condensedJPerM;
    private double steamJPerM;
    private double steamSensibleJPerM;
    private double removedJPerM;
    private double outflowJPerM;
    private double perfusionJPerM;
    private double storedJPerM;
    private double undeliveredJPerM;

    /** Starts a slice afresh; arrays are kept when they are long enough. */
    void begin(RadialGrid newGrid, Medium newMedium) {
        grid = newGrid;
        medium = newMedium;
        n = grid.cells;
        if (temperatureC.length < n) {
            allocate(n);
        }
        for (int i = 0; i < n; i++) {
            temperatureC[i] = medium.startC[i];
            water[i] = medium.waterKgPerM3[i];
            wetness[i] = 1;
            conductivity[i] = medium.wetConductivity[i];
            storage[i] = medium.wetHeatCapacity[i] * grid.volumeM2[i];
            boils[i] = false;
        }
        dried = true;
        clearBook();
        rest();
    }

    private void allocate(int cells) {
        temperatureC = new double[cells];
        beforeC = new double[cells];
        water = new double[cells];
        wetness = new double[cells];
        conductivity = new double[cells];
        storage = new double[cells];
        conductance = new double[cells + 1];
        sourceWPerM = new double[cells];
        pinnedWPerM = new double[cells];
        inverse = new double[cells];
        upper = new double[cells];
        right = new double[cells];
        boils = new boolean[cells];
        pinned = new boolean[cells];
        solvedPinned = new boolean[cells];
    }

    private void clearBook() {
        sourceJPerM = 0;
        condensedJPerM = 0;
        steamJPerM = 0;
        steamSensibleJPerM = 0;
        removedJPerM = 0;
        outflowJPerM = 0;
        perfusionJPerM = 0;
        storedJPerM = 0;
        undeliveredJPerM = 0;
    }

    /** Switches every source off. */
    void rest() {
        Arrays.fill(sourceWPerM, 0, n, 0);
        innerWPerMK = 0;
        innerWPerM = 0;
        innerCondenses = false;
        undeliveredWPerM = 0;
    }

    /** Whether every shell is colder than this now. */
    boolean colderThan(double limitC) {
        for (int i = 0; i < n; i++) {
            if (temperatureC[i] >= limitC) {
                return false;
            }
        }
        return true;
    }

    /** Heat put into each shell, W per m of vein; the caller fills it. */
    double[] sourceWPerM() {
        return sourceWPerM;
    }

    /** Power the device could not deliver now, W/m; only booked. */
    void undelivered(double wPerM) {
        undeliveredWPerM = wPerM;
    }

    /** Lets heat flow in from a body at a held temperature through a film coefficient on the inner face. */
    void touch(double filmWPerM2K, double bodyTemperatureC) {
        innerWPerMK = innerConductance(filmWPerM2K);
        innerC = bodyTemperatureC;
    }

    /** Lets steam condense on the inner face: the flux offered or, if smaller, what the face can take up to boiling. */
    void condense(double offeredWPerM, double filmWPerM2K) {
        innerCondenses = true;
        double takenWPerMK = innerConductance(filmWPerM2K);
        if (offeredWPerM < takenWPerMK * (medium.boilingC - temperatureC[0])) {
            innerWPerM = offeredWPerM;
        } else {
            innerWPerMK = takenWPerMK;
            innerC = medium.boilingC;
        }
    }

    private double innerConductance(double filmWPerM2K) {
        return 2 * Math.PI / (1 / (filmWPerM2K * grid.faceM[0]) + grid.lnInner[0] / conductivity[0]);
    }

    /** Moves the slice on by one step with the sources set. */
    void step(double dtS) {
        if (dried) {
            refreshConductances();
        }
        for (int i = 0; i < n; i++) {
            pinned[i] = boils[i] && water[i] > 0;
        }
        double[] spare = beforeC;
        beforeC = temperatureC;
        temperatureC = spare;
        do {
            solve(dtS);
        } while (releasesAny(dtS));
        bookFlows(dtS);
        changePhase(dtS);
    }

    private void refreshConductances() {
        for (int i = 1; i < n; i++) {
            conductance[i] =
                    2 * Math.PI / (grid.lnOuter[i - 1] / conductivity[i - 1] + grid.lnInner[i] / conductivity[i]);
        }
        conductance[n] = 2 * Math.PI * conductivity[n - 1] / grid.lnOuter[n - 1];
        dried = false;
        solvedDtS = NONE;
    }

    /** Tridiagonal solve with pinned rows; the inner face enters as a neighbour of the first shell. */
    private void solve(double dtS) {
        double perS = 1 / dtS;
        if (matrixMoved(dtS)) {
            factor(perS);
            solvedDtS = dtS;
            solvedInnerWPerMK = innerWPerMK;
            System.arraycopy(pinned, 0, solvedPinned, 0, n);
        }
        double previousRight = innerC;
        for (int i = 0; i < n; i++) {
            if (pinned[i]) {
                previousRight = medium.boilingC;
            } else {
                double known = storage[i] * perS * beforeC[i]
                        + sourceWPerM[i]
                        + medium.perfusionWPerMK[i] * medium.bodyC
                        + boundaryWPerM(i);
                previousRight = (known + conductance[i] * previousRight) * inverse[i];
            }
            right[i] = previousRight;
        }
        temperatureC[n - 1] = right[n - 1];
        for (int i = n - 2; i >= 0; i--) {
            temperatureC[i] = right[i] + upper[i] * temperatureC[i + 1];
        }
    }

    /** Most steps of a run are of one length and dry nothing, so that only the right side is new. */
    private boolean matrixMoved(double dtS) {
        return dtS != solvedDtS || innerWPerMK != solvedInnerWPerMK || !Arrays.equals(pinned, 0, n, solvedPinned, 0, n);
    }

    private void factor(double perS) {
        conductance[0] = innerWPerMK;
        double previousUpper = 0;
        for (int i = 0; i < n; i++) {
            if (pinned[i]) {
                previousUpper = 0;
            } else {
                double kept = storage[i] * perS;
                double blood = medium.perfusionWPerMK[i];
                inverse[i] = 1 / (kept + blood + conductance[i] * (1 - previousUpper) + conductance[i + 1]);
                previousUpper = conductance[i + 1] * inverse[i];
            }
            upper[i] = previousUpper;
        }
    }

    private double boundaryWPerM(int i) {
        double known = i == 0 ? innerWPerM : 0;
        return i == n - 1 ? known + conductance[n] * medium.bodyC : known;
    }

    private boolean releasesAny(double dtS) {
        boolean released = false;
        for (int i = 0; i < n; i++) {
            if (pinned[i]) {
                pinnedWPerM[i] = netWPerM(i, dtS);
                if (pinnedWPerM[i] < 0) {
                    pinned[i] = false;
                    released = true;
                }
            }
        }
        return released;
    }

    /** What a pinned shell gains above what holds it at the boiling point. */
    private double netWPerM(int i, double dtS) {
        double inside = i == 0 ? innerC : temperatureC[i - 1];
        double outside = i == n - 1 ? medium.bodyC : temperatureC[i + 1];
        double here = temperatureC[i];
        double face = i == 0 ? innerWPerM : 0;
        return sourceWPerM[i]
                + face
                + conductance[i] * (inside - here)
                + conductance[i + 1] * (outside - here)
                - medium.perfusionWPerMK[i] * (here - medium.bodyC)
                - storage[i] / dtS * (here - beforeC[i]);
    }

    private void bookFlows(double dtS) {
        double source = 0;
        double perfused = 0;
        for (int i = 0; i < n; i++) {
            source += sourceWPerM[i];
            perfused += medium.perfusionWPerMK[i] * (temperatureC[i] - medium.bodyC);
        }
        double inner = innerWPerM + innerWPerMK * (innerC - temperatureC[0]);
        if (innerCondenses) {
            condensedJPerM += inner * dtS;
        } else {
            source += inner;
        }
        sourceJPerM += source * dtS;
        perfusionJPerM += perfused * dtS;
        outflowJPerM += conductance[n] * (temperatureC[n - 1] - medium.bodyC) * dtS;
        undeliveredJPerM += undeliveredWPerM * dtS;
    }

    private void changePhase(double dtS) {
        double boilingC = medium.boilingC;
        double capC = medium.capC;
        double storedSoFar = storedJPerM;
        for (int i = 0; i < n; i++) {
            double reachedC = temperatureC[i];
            boils[i] = false;
            if (pinned[i] || reachedC > capC || reachedC > boilingC && water[i] > 0) {
                storedJPerM = storedSoFar;
                heatBeyond(i, dtS);
                storedSoFar = storedJPerM;
            } else {
                storedSoFar += storage[i] * reachedC - storage[i] * beforeC[i];
            }
        }
        storedJPerM = storedSoFar;
    }

    /** A shell at the boiling point, above it with water left, or above the cap. */
    private void heatBeyond(int i, double dtS) {
        if (pinned[i]) {
            evaporate(i, pinnedWPerM[i] * dtS / grid.volumeM2[i]);
        } else if (water[i] > 0) {
            evaporate(i, storage[i] / grid.volumeM2[i] * (temperatureC[i] - medium.boilingC));
        } else {
            settle(i, storage[i], temperatureC[i]);
        }
    }

    /** Spends the heat above boiling on water first; what is left heats the dry shell. */
    private void evaporate(int i, double excessJPerM3) {
        double lost = Math.min(water[i], excessJPerM3 / medium.latentJPerKg);
        double latent = lost * medium.latentJPerKg;
        double volume = grid.volumeM2[i];
        double before = storage[i] / volume;
        water[i] -= lost;
        double f = water[i] / medium.waterKgPerM3[i];
        double after = medium.dryHeatCapacity + f * (medium.wetHeatCapacity[i] - medium.dryHeatCapacity);
        double carried = (before - after) * medium.boilingC;
        steamJPerM += latent * volume;
        steamSensibleJPerM += carried * volume;
        wetness[i] = f;
        conductivity[i] = medium.dryConductivity + f * (medium.wetConductivity[i] - medium.dryConductivity);
        boils[i] = water[i] > 0;
        dried = true;
        settle(i, after * volume, (before * medium.boilingC + excessJPerM3 - latent - carried) / after);
    }

    private void settle(int i, double newStorage, double reachedC) {
        double heldC = Math.min(reachedC, medium.capC);
        removedJPerM += newStorage * (reachedC - heldC);
        storedJPerM += newStorage * heldC - storage[i] * beforeC[i];
        storage[i] = newStorage;
        temperatureC[i] = heldC;
    }

    int cells() {
        return n;
    }

    RadialGrid grid() {
        return grid;
    }

    /** Shell temperatures now, C; longer than {@link #cells()} when the workspace was used for more. */
    double[] temperatureC() {
        return temperatureC;
    }

    /** Shell temperatures at the start of the last step, C. */
    double[] beforeC() {
        return beforeC;
    }

    /** Share of the water each shell still holds. */
    double[] wetness() {
        return wetness;
    }

    /** Temperature held beyond the outermost shell. */
    double bodyC() {
        return medium.bodyC;
    }

    /** Latent heat carried away by vapour so far, J/m. */
    double steamJPerM() {
        return steamJPerM;
    }

    /** Heat flowing in through the inner face in the last step, W/m. */
    double innerFluxWPerM() {
        return innerWPerM + innerWPerMK * (innerC - temperatureC[0]);
    }

    /** The book so far. */
    EnergyBook book() {
        double perCm = 0.01;
        return new EnergyBook(
                sourceJPerM * perCm,
                condensedJPerM * perCm,
                steamJPerM * perCm,
                steamSensibleJPerM * perCm,
                removedJPerM * perCm,
                outflowJPerM * perCm,
                perfusionJPerM * perCm,
                storedJPerM * perCm,
                undeliveredJPerM * perCm);
    }
}
