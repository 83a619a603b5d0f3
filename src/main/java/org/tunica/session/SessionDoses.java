package org.tunica.session;

import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.knowledge.Knowledge;

/** Doses that were given in a session, held against the limits a plan keeps. */
public final class SessionDoses {
    private static final double NOISE_OF_A_DIVISION = 1e-9;

    private final Knowledge knowledge;
    private final SharedLimits limits;

    /** Doses judged by the limits of a release. */
    public SessionDoses(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.limits = new SharedLimits(knowledge);
    }

    /**
     * A dose held against its limit.
     *
     * @param total both as they are told, rounded
     * @param over whether the dose, not rounded, is more than the limit
     */
    public record Held(SessionPlan.Total total, boolean over) {}

    private static Held held(Shared shared, double amount, SharedLimit limit) {
        return new Held(
                SessionWriter.total(shared, amount, Optional.of(limit)),
                amount > limit.limit() * (1 + NOISE_OF_A_DIVISION));
    }

    /**
     * Lidocaine of all kinds.
     *
     * @param adrenaline whether all of it held adrenaline; where that is not recorded, take it as without
     */
    public Held lidocaine(double mgPerKg, boolean adrenaline, OptionalDouble weightKg) {
        return held(Shared.LIDOCAINE, mgPerKg, limits.lidocaine(adrenaline, weightKg));
    }

    /**
     * Lidocaine injected outside a tumescent bed.
     *
     * @param adrenaline whether it held adrenaline; where that is not recorded, take it as without
     */
    public Held lidocaineElsewhere(double mgPerKg, boolean adrenaline, OptionalDouble weightKg) {
        return held(Shared.LIDOCAINE, mgPerKg, limits.lidocaineElsewhere(adrenaline, weightKg));
    }

    /** Polidocanol given as liquid. */
    public Held polidocanolLiquid(double ml) {
        return held(Shared.POLIDOCANOL_LIQUID, ml, limits.named(SharedLimits.POLIDOCANOL_LIQUID));
    }

    /** Polidocanol as liquid and in foam. */
    public Held polidocanol(double mgPerKg) {
        return held(Shared.POLIDOCANOL, mgPerKg, limits.named("dose.polidocanol.day"));
    }

    /** Foam of all drugs. */
    public Held foam(double ml) {
        return held(Shared.FOAM, ml, limits.foam());
    }

    /** Tetradecyl sulphate: the shares of {@link #tetradecylFoamShare} and {@link #tetradecylLiquidShare} together. */
    public Held tetradecyl(double share) {
        return held(Shared.TETRADECYL, share, SharedLimit.of(1, SharedLimits.TETRADECYL));
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
