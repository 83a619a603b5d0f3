package org.tunica.treatment;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.tunica.casefile.Room;

/** What was given in a session, added up; a sum is unknown as soon as one of its parts is. */
final class GivenDoses {
    private static final double MG_PER_ML_OF_ONE_PERCENT = 10;
    private static final OptionalDouble NONE = OptionalDouble.empty();

    private final DeliveredSession session;

    GivenDoses(DeliveredSession session) {
        this.session = session;
    }

    OptionalDouble tumescentMl() {
        return sum(DeliveredSegment::tumescent, DeliveredSegment.Tumescent::volumeMl);
    }

    /** In the tumescence and elsewhere. */
    OptionalDouble lidocaineMg() {
        OptionalDouble tumescent = sum(DeliveredSegment::tumescent, GivenDoses::lidocaineMg);
        return tumescent.isPresent()
                ? OptionalDouble.of(
                        tumescent.getAsDouble() + session.otherLidocaineMg().orElse(0))
                : tumescent;
    }

    /** The part of it that is not known to have held adrenaline. */
    OptionalDouble plainLidocaineMg() {
        OptionalDouble tumescent = sum(
                segment ->
                        segment.tumescent().filter(given -> !given.adrenaline().orElse(false)),
                GivenDoses::lidocaineMg);
        boolean plain = !session.otherAdrenaline().orElse(false);
        return tumescent.isPresent() && plain
                ? OptionalDouble.of(
                        tumescent.getAsDouble() + session.otherLidocaineMg().orElse(0))
                : tumescent;
    }

    /** Injected outside the tumescence; nothing is none, for it is asked once for the session. */
    OptionalDouble otherLidocaineMg() {
        return session.otherLidocaineMg();
    }

    /** Whether what was injected outside the tumescence is known to have held adrenaline. */
    boolean otherAdrenaline() {
        return session.otherAdrenaline().orElse(false);
    }

    /** Polidocanol given as liquid, not as foam. */
    OptionalDouble polidocanolLiquidMl() {
        return sum(
                segment -> segment.sclerosant()
                        .filter(given -> !isFoam(given))
                        .filter(given -> given.drug()
                                .map(Room.SclerosantDrug.POLIDOCANOL::equals)
                                .orElse(true)),
                given -> given.drug().isEmpty() ? NONE : liquidMl(given));
    }

    OptionalDouble foamMl() {
        return sum(segment -> segment.sclerosant().filter(GivenDoses::isFoam), DeliveredSegment.Sclerosant::foamMl);
    }

    OptionalDouble drugMg(Room.SclerosantDrug drug) {
        return sum(
                segment -> segment.sclerosant()
                        .filter(given -> given.drug().map(drug::equals).orElse(true)),
                given -> given.drug().isEmpty() ? NONE : drugMg(given));
    }

    OptionalDouble adhesiveMl() {
        return sum(DeliveredSegment::adhesive, DeliveredSegment.Adhesive::volumeMl);
    }

    List<DeliveredSegment.Sclerosant> sclerosants() {
        return given(DeliveredSegment::sclerosant);
    }

    static boolean isFoam(DeliveredSegment.Sclerosant given) {
        return given.foamMl().isPresent()
                || given.gas().isPresent()
                || given.gasParts().isPresent();
    }

    static OptionalDouble drugMg(DeliveredSegment.Sclerosant given) {
        return mg(liquidMl(given), given.percent());
    }

    /** As recorded, or what the foam was made of. */
    static OptionalDouble liquidMl(DeliveredSegment.Sclerosant given) {
        if (given.liquidMl().isPresent()
                || given.foamMl().isEmpty()
                || given.gasParts().isEmpty()) {
            return given.liquidMl();
        }
        return OptionalDouble.of(
                given.foamMl().getAsDouble() / (1 + given.gasParts().getAsDouble()));
    }

    static OptionalDouble lidocaineMg(DeliveredSegment.Tumescent given) {
        return mg(given.volumeMl(), given.lidocainePercent());
    }

    private static OptionalDouble mg(OptionalDouble ml, OptionalDouble percent) {
        return ml.isPresent() && percent.isPresent()
                ? OptionalDouble.of(ml.getAsDouble() * percent.getAsDouble() * MG_PER_ML_OF_ONE_PERCENT)
                : NONE;
    }

    private <T> List<T> given(Function<DeliveredSegment, Optional<T>> part) {
        return session.segments().stream()
                .flatMap(segment -> part.apply(segment).stream())
                .toList();
    }

    private <T> OptionalDouble sum(Function<DeliveredSegment, Optional<T>> part, Function<T, OptionalDouble> amount) {
        double sum = 0;
        for (T given : given(part)) {
            OptionalDouble one = amount.apply(given);
            if (one.isEmpty()) {
                return NONE;
            }
            sum += one.getAsDouble();
        }
        return OptionalDouble.of(sum);
    }
}
