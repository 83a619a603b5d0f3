package org.tunica.treatment;

import org.tunica.casefile.Word;
import org.tunica.physics.HeatGiven;

/** Whether heat killed a wall through, as far as the heat model can tell. */
public enum Killed implements Word {
    /** Likely enough to be called so. */
    PROBABLY,
    /** Neither likely nor unlikely enough. */
    OPEN,
    /** Less likely than the lower bound. */
    PROBABLY_NOT,
    /** Something the model needs is not recorded, or lies outside what it answers for. */
    CANNOT_BE_TOLD;

    static Killed of(HeatGiven.Effect effect, DeliveredLimits limits) {
        if (!effect.told()) {
            return CANNOT_BE_TOLD;
        }
        double share = effect.delayedProbability();
        if (share >= limits.killedFromShare()) {
            return PROBABLY;
        }
        return share < limits.notKilledBelowShare() ? PROBABLY_NOT : OPEN;
    }

    /** In words, for a stretch. */
    String says(HeatGiven.Effect effect) {
        return switch (this) {
            case PROBABLY -> "was probably killed through";
            case OPEN -> "may or may not have been killed through";
            case PROBABLY_NOT -> "was probably not killed through";
            case CANNOT_BE_TOLD ->
                "cannot be judged: whether it was killed through cannot be told, because " + effect.silence();
        };
    }
}
