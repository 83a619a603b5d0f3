package org.tunica.session;

import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.knowledge.Knowledge;

/** Doses that were given in a session, held against the limits a plan keeps. */
public final class SessionDoses {
    private final Knowledge knowledge;
    private final SharedLimits limits;

    /** Doses judged by the limits of a release. */
    public SessionDoses(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.limits = new SharedLimits(knowledge);
    }

    /**
     * Lidocaine of all kinds.
     *
     * @param adrenaline whether all of it held adrenaline; where that is not recorded, take it as without
     */
    public SessionPlan.Total lidocaine(double mgPerKg, boolean adrenaline, OptionalDouble weightKg) {
        return SessionWriter.total(Shared.LIDOCAINE, mgPerKg, Optional.of(limits.lidocaine(adrenaline, weightKg)));
    }

    /** Polidocanol as liquid and in foam. */
    public SessionPlan.Total polidocanol(double mgPerKg) {
        return SessionWriter.total(Shared.POLIDOCANOL, mgPerKg, Optional.of(limits.named("dose.polidocanol.day")));
    }

    /** Foam of all drugs. */
    public SessionPlan.Total foam(double ml) {
        return SessionWriter.total(Shared.FOAM, ml, Optional.of(limits.foam()));
    }

    /** Tetradecyl sulphate: the shares of {@link #tetradecylFoamShare} and {@link #tetradecylLiquidShare} together. */
    public SessionPlan.Total tetradecyl(double share) {
        return SessionWriter.total(Shared.TETRADECYL, share, Optional.of(SharedLimit.of(1, SharedLimits.TETRADECYL)));
    }

    /** A volume of foam as a share of what a session may take. */
    public double tetradecylFoamShare(double ml) {
        return ml / DemandCalculator.tetradecylFoamMostMl(knowledge);
    }

    /** A volume of liquid as a share of what a session may take at its strength. */
    public double tetradecylLiquidShare(double ml, double percent) {
        return ml / DemandCalculator.tetradecylLiquidMostMl(knowledge, percent);
    }
}
