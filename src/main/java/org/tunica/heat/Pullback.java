package org.tunica.heat;

import java.util.Optional;

/** A device drawn past the slice at a steady speed while it gives a steady power. SI units. */
final class Pullback implements HeatSupply {
    private static final int STEPS = 160;

    private final AxialProfile profile;
    private final double speedMPerS;
    private final double powerW;
    private final Deposition deposition;

    /** @param powerW power that reaches the vein */
    Pullback(AxialProfile profile, double speedMPerS, double powerW, Deposition deposition) {
        this.profile = profile;
        this.speedMPerS = speedMPerS;
        this.powerW = powerW;
        this.deposition = deposition;
    }

    @Override
    public double durationS() {
        return 2 * profile.halfM() / speedMPerS;
    }

    @Override
    public int steps() {
        return STEPS;
    }

    @Override
    public void heat(double middleS, Bioheat slice) {
        heatAt(middleS * speedMPerS - profile.halfM(), slice);
    }

    private void heatAt(double zM, Bioheat slice) {
        double line = powerW * profile.perM(zM);
        if (line > 0) {
            deposition.deposit(line, slice);
        }
    }

    /** The same pull-back in its own steam; see {@link Return}. */
    HeatSupply inSteam(Steam steam) {
        return new Return(steam, 0);
    }

    /**
     * How vapour condenses again.
     *
     * @param share share of it that does
     * @param lengthM decay length along the vein, both ways
     * @param mostW no more than this, the power set
     * @param cutOffC innermost temperature above which nothing condenses
     * @param filmWPerM2K heat transfer coefficient of condensing steam
     */
    record Steam(double share, double lengthM, double mostW, double cutOffC, double filmWPerM2K) {}

    /**
     * The pull-back with vapour of the run before condensing around it (heat pipe),
     *
     * <pre>q(z) = share min(S, most) exp(-|z| / length) / (2 length),   S = speed times steam per metre</pre>
     *
     * Calibrated closure; motive: bubbles keep some 20 mm of vein at the boiling point (Lasers Med Sci 2010;25:907,
     * abstract). Time is left for three lengths before and after the source.
     */
    private final class Return implements HeatSupply {
        private static final double LENGTHS_KEPT = 3;

        private final Steam steam;
        private final double condensingW;

        Return(Steam steam, double vapourW) {
            this.steam = steam;
            condensingW = steam.share() * Math.min(vapourW, steam.mostW());
        }

        @Override
        public double durationS() {
            return Pullback.this.durationS() + 2 * LENGTHS_KEPT * steam.lengthM() / speedMPerS;
        }

        @Override
        public int steps() {
            return 2 * STEPS;
        }

        @Override
        public void heat(double middleS, Bioheat slice) {
            double zM = (middleS - durationS() / 2) * speedMPerS;
            heatAt(zM, slice);
            if (condensingW > 0 && slice.temperatureC()[0] < steam.cutOffC()) {
                double offered = condensingW * Math.exp(-Math.abs(zM) / steam.lengthM()) / (2 * steam.lengthM());
                slice.condense(offered, steam.filmWPerM2K());
            }
        }

        @Override
        public Optional<HeatSupply> withSteam(double steamJPerM) {
            return steamJPerM > 0 ? Optional.of(new Return(steam, speedMPerS * steamJPerM)) : Optional.empty();
        }
    }
}
