package org.tunica.physics;

/** Arithmetic of drug doses against the limits of knowledge/. Masses in mg, volumes in mL, strengths in per cent. */
final class Doses {
    private static final double MG_PER_ML_OF_ONE_PERCENT = 10;

    private final DoseLimits limits;

    /** Doses judged by these limits. */
    public Doses(DoseLimits limits) {
        this.limits = limits;
    }

    /** How a dose stands against its limits. */
    public enum Level {
        WITHIN,
        CONFIRM,
        OVER
    }

    /** Drug in mg in a volume of liquid. */
    public static double liquidMg(double ml, double percent) {
        return ml * percent * MG_PER_ML_OF_ONE_PERCENT;
    }

    /** Most polidocanol in a day, mg. */
    public double polidocanolDayMg(double weightKg) {
        WallGeometry.positive("weightKg", weightKg);
        return limits.polidocanolMgPerKg() * weightKg;
    }

    /** Most polidocanol liquid of a strength by mass alone, mL. */
    public double polidocanolLiquidByMassMl(double weightKg, double percent) {
        WallGeometry.positive("percent", percent);
        return polidocanolDayMg(weightKg) / (percent * MG_PER_ML_OF_ONE_PERCENT);
    }

    /** Most polidocanol liquid of a strength in a session, mL: the smaller of mass and volume limit. */
    public double polidocanolLiquidMl(double weightKg, double percent) {
        return Math.min(polidocanolLiquidByMassMl(weightKg, percent), limits.polidocanolLiquidSessionMl());
    }

    /** Whether a mass of polidocanol is allowed. */
    public Level polidocanol(double mg, double weightKg) {
        return mg <= polidocanolDayMg(weightKg) ? Level.WITHIN : Level.OVER;
    }

    /** Whether a foam is allowed by volume and, for polidocanol, by mass. */
    public Level polidocanolFoam(FoamMix foam, double weightKg) {
        boolean volume = foam.foamMl() <= limits.foamSessionMl();
        return volume && polidocanol(foam.drugMg(), weightKg) == Level.WITHIN ? Level.WITHIN : Level.OVER;
    }

    /** Whether a volume of the strongest sodium tetradecyl sulphate liquid is allowed. */
    public Level strongTetradecyl(double ml) {
        return ml <= limits.stsStrongLiquidSessionMl() ? Level.WITHIN : Level.OVER;
    }

    /** Most lidocaine injected outside a tumescent bed, mg. */
    public double lidocaineMg(double weightKg, boolean adrenaline) {
        WallGeometry.positive("weightKg", weightKg);
        return adrenaline
                ? Math.min(limits.lidocaineAdrenalineMgPerKg() * weightKg, limits.lidocaineAdrenalineMg())
                : Math.min(limits.lidocainePlainMgPerKg() * weightKg, limits.lidocainePlainMg());
    }

    /** Tumescent lidocaine with adrenaline: above the first line confirm, above the second stop. */
    public Level tumescent(double lidocaineMgPerKg) {
        if (lidocaineMgPerKg > limits.tumescentStopMgPerKg()) {
            return Level.OVER;
        }
        return lidocaineMgPerKg > limits.tumescentConfirmMgPerKg() ? Level.CONFIRM : Level.WITHIN;
    }

    /** Volume in mL of a tumescent mix at which the confirm line is reached. */
    public double tumescentConfirmMl(double weightKg, double lidocainePercent) {
        return tumescentMl(limits.tumescentConfirmMgPerKg(), weightKg, lidocainePercent);
    }

    /** Volume in mL of a tumescent mix at which the stop line is reached. */
    public double tumescentStopMl(double weightKg, double lidocainePercent) {
        return tumescentMl(limits.tumescentStopMgPerKg(), weightKg, lidocainePercent);
    }

    private static double tumescentMl(double mgPerKg, double weightKg, double lidocainePercent) {
        WallGeometry.positive("weightKg", weightKg);
        WallGeometry.positive("lidocainePercent", lidocainePercent);
        return mgPerKg * weightKg / (lidocainePercent * MG_PER_ML_OF_ONE_PERCENT);
    }
}
