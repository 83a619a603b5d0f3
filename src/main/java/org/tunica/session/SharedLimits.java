package org.tunica.session;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Room;
import org.tunica.knowledge.Knowledge;

/** The limits a session of a case must keep. */
final class SharedLimits {
    /** Foam, weak liquid and strong liquid have a ceiling each; shares of them add up. */
    static final String TETRADECYL = "foam.sts.label.max, dose.sts.liquid-session, dose.sts.strong-liquid-session";

    static final String POLIDOCANOL_LIQUID = "dose.polidocanol.liquid-session";

    private static final String STOP = "dose.tumescent.stop";
    private static final String CONFIRM = "dose.tumescent.confirm";
    private static final String FOAM = "dose.foam.session";
    private static final String PLAIN_BY_WEIGHT = "dose.lidocaine.plain-by-weight";
    private static final String PLAIN = "dose.lidocaine.plain";
    private static final String ADRENALINE_BY_WEIGHT = "dose.lidocaine.adrenaline-by-weight";
    private static final String ADRENALINE = "dose.lidocaine.adrenaline";

    /** Ids of the quantities that limit a session or what was given in one. */
    static final Set<String> IDS = Set.of(
            "dose.polidocanol.day",
            POLIDOCANOL_LIQUID,
            STOP,
            CONFIRM,
            FOAM,
            PLAIN_BY_WEIGHT,
            PLAIN,
            ADRENALINE_BY_WEIGHT,
            ADRENALINE,
            "dose.sts.strong-liquid-session");

    private final Knowledge knowledge;

    SharedLimits(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    Map<Shared, SharedLimit> of(CaseFile caseFile) {
        Map<Shared, SharedLimit> limits = new EnumMap<>(Shared.class);
        boolean adrenaline =
                caseFile.room().tumescent().flatMap(Room.Tumescent::adrenaline).orElse(false);
        limits.put(Shared.LIDOCAINE, lidocaine(adrenaline, caseFile.patient().weightKg()));
        limits.put(Shared.POLIDOCANOL, named("dose.polidocanol.day"));
        limits.put(Shared.POLIDOCANOL_LIQUID, named(POLIDOCANOL_LIQUID));
        limits.put(Shared.TETRADECYL, SharedLimit.of(1, TETRADECYL));
        limits.put(Shared.FOAM, foam());
        caseFile.room()
                .freeMinutes()
                .ifPresent(minutes -> limits.put(Shared.TIME, SharedLimit.of(minutes, "room.freeMinutes")));
        limits.put(Shared.GENERATOR, named("session.generators.most"));
        return limits;
    }

    SharedLimit named(String id) {
        return SharedLimit.of(knowledge.value(id), id);
    }

    /** The routine ceiling: several segments keep it together; what one wide vein takes alone is judged by the rules. */
    SharedLimit foam() {
        double ceiling = knowledge.value(FOAM);
        return new SharedLimit(ceiling, FOAM, true, Optional.empty(), Optional.empty());
    }

    /** Without adrenaline, or where that is not recorded, no source allows a tumescent dose: the plain label is kept. */
    SharedLimit lidocaine(boolean adrenaline, OptionalDouble weightKg) {
        if (adrenaline) {
            SharedLimit.Line confirm = new SharedLimit.Line(knowledge.value(CONFIRM), CONFIRM);
            return new SharedLimit(knowledge.value(STOP), STOP, false, Optional.of(confirm), Optional.empty());
        }
        return byWeight(
                PLAIN_BY_WEIGHT,
                PLAIN,
                weightKg,
                Optional.of("no source allows more without adrenaline; the plain label is kept"));
    }

    /** Outside a tumescent bed the label holds, with adrenaline as without. */
    SharedLimit lidocaineElsewhere(boolean adrenaline, OptionalDouble weightKg) {
        return adrenaline
                ? byWeight(ADRENALINE_BY_WEIGHT, ADRENALINE, weightKg, Optional.empty())
                : byWeight(PLAIN_BY_WEIGHT, PLAIN, weightKg, Optional.empty());
    }

    /** The smaller of a limit by weight and one whatever the weight, as mg/kg. */
    private SharedLimit byWeight(String byWeightId, String flatId, OptionalDouble weightKg, Optional<String> note) {
        double byWeight = knowledge.value(byWeightId);
        double flat = weightKg.isPresent() ? knowledge.value(flatId) / weightKg.getAsDouble() : byWeight;
        return flat < byWeight
                ? new SharedLimit(flat, flatId, false, Optional.empty(), note)
                : new SharedLimit(byWeight, byWeightId, false, Optional.empty(), note);
    }
}
