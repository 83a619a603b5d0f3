package org.tunica.pastcases;

import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.knowledge.Knowledge;

/** Puts ages and weights into bands. */
final class Banding {
    private final int width;
    private final int under;
    private final int over;

    private Banding(Knowledge knowledge, String what) {
        this.width = (int) knowledge.value("anonymity." + what + ".band");
        this.under = (int) knowledge.value("anonymity." + what + ".under");
        this.over = (int) knowledge.value("anonymity." + what + ".over");
    }

    static Banding ofAge(Knowledge knowledge) {
        return new Banding(knowledge, "age");
    }

    static Banding ofWeight(Knowledge knowledge) {
        return new Banding(knowledge, "weight");
    }

    Optional<Band> of(OptionalDouble value) {
        return value.isPresent() ? Optional.of(of(value.getAsDouble())) : Optional.empty();
    }

    /** The band and its neighbours together, so many as make one; an open band stays. */
    Band coarser(Band band, int together) {
        if (band.from().isEmpty() || band.to().isEmpty()) {
            return band;
        }
        int wide = width * together;
        int from = under + Math.max(0, band.from().getAsInt() - under) / wide * wide;
        return Band.between(from, Math.max(band.to().getAsInt(), Math.min(from + wide, over) - 1));
    }

    /** A child's and a very old person's band is open, as such people are few. */
    Band of(double value) {
        if (value < under) {
            return Band.under(under);
        }
        if (value >= over) {
            return Band.orMore(over);
        }
        int from = under + (int) ((value - under) / width) * width;
        return Band.between(from, Math.min(from + width, over) - 1);
    }
}
