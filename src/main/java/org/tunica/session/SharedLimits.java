package org.tunica.session;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Room;
import org.tunica.knowledge.Knowledge;

/** The limits a session of a case must keep. */
final class SharedLimits {
    private static final String STOP = "dose.tumescent.stop";
    private static final String CONFIRM = "dose.tumescent.confirm";
    private static final String PLAIN_BY_WEIGHT = "dose.lidocaine.plain-by-weight";
    private static final String PLAIN = "dose.lidocaine.plain";

    private final Knowledge knowledge;

    SharedLimits(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    Map<Shared, SharedLimit> of(CaseFile caseFile) {
        Map<Shared, SharedLimit> limits = new EnumMap<>(Shared.class);
        limits.put(Shared.LIDOCAINE, lidocaine(caseFile));
        limits.put(Shared.POLIDOCANOL, named("dose.polidocanol.day"));
        limits.put(
                Shared.TETRADECYL,
                new SharedLimit(1, "dose.sts.strong-liquid-session", Optional.empty(), Optional.empty()));
        limits.put(Shared.FOAM, named("dose.foam.session"));
        caseFile.room()
                .minutes()
                .ifPresent(minutes -> limits.put(
                        Shared.TIME,
                        new SharedLimit(minutes, "room.minutes", Optional.empty(), Optional.empty())));
        limits.put(Shared.GENERATOR, named("session.generators.most"));
        return limits;
    }

    private SharedLimit named(String id) {
        return new SharedLimit(knowledge.value(id), id, Optional.empty(), Optional.empty());
    }

    /** Without adrenaline, or where that is not recorded, no source allows a tumescent dose: the plain label is kept. */
    private SharedLimit lidocaine(CaseFile caseFile) {
        boolean adrenaline =
                caseFile.room().tumescent().flatMap(Room.Tumescent::adrenaline).orElse(false);
        if (adrenaline) {
            SharedLimit.Line confirm = new SharedLimit.Line(knowledge.value(CONFIRM), CONFIRM);
            return new SharedLimit(knowledge.value(STOP), STOP, Optional.of(confirm), Optional.empty());
        }
        Optional<String> note = Optional.of("no source allows more without adrenaline; the plain label is kept");
        OptionalDouble weightKg = caseFile.patient().weightKg();
        double byWeight = knowledge.value(PLAIN_BY_WEIGHT);
        double flat = weightKg.isPresent() ? knowledge.value(PLAIN) / weightKg.getAsDouble() : byWeight;
        return flat < byWeight
                ? new SharedLimit(flat, PLAIN, Optional.empty(), note)
                : new SharedLimit(byWeight, PLAIN_BY_WEIGHT, Optional.empty(), note);
    }
}
