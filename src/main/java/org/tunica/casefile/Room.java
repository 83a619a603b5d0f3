package org.tunica.casefile;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What the room holds; every part may be unknown.
 *
 * @param devices ids of techniques whose device is there
 * @param sclerosants drugs in stock by strength
 * @param freeMinutes how long the room is free for one session; absent when nothing presses
 */
public record Room(
        Optional<Set<String>> devices,
        Optional<List<Sclerosant>> sclerosants,
        Optional<Set<FoamGas>> foamGas,
        Optional<Tumescent> tumescent,
        Optional<Boolean> tiltTable,
        OptionalDouble freeMinutes) {

    /** Gas that makes foam. */
    public enum FoamGas implements Word {
        AIR,
        CO2_O2
    }

    /** A sclerosant drug. */
    public enum SclerosantDrug implements Word {
        POLIDOCANOL,
        SODIUM_TETRADECYL_SULPHATE
    }

    /**
     * A drug in stock.
     *
     * @param percent grams in 100 mL
     */
    public record Sclerosant(SclerosantDrug drug, double percent) {}

    /**
     * The tumescent mix.
     *
     * @param lidocainePercent grams in 100 mL
     */
    public record Tumescent(OptionalDouble lidocainePercent, Optional<Boolean> adrenaline, Optional<Boolean> chilled) {}
}
