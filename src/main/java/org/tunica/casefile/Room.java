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
 * @param costClasses how the techniques cost beside each other at this site; absent when the site does not say
 */
public record Room(
        Optional<Set<String>> devices,
        Optional<List<Sclerosant>> sclerosants,
        Optional<Set<FoamGas>> foamGas,
        Optional<Tumescent> tumescent,
        Optional<Boolean> tiltTable,
        OptionalDouble freeMinutes,
        Optional<CostClasses> costClasses) {

    /** Gas that makes foam. */
    public enum FoamGas implements Word {
        AIR,
        CO2_O2
    }

    /** What one technique costs a site beside its other techniques: a place in an order, never an amount of money. */
    public enum CostClass implements Word {
        LOW,
        MIDDLING,
        HIGH
    }

    /**
     * Techniques by what they cost this site beside each other. A technique stands in one class at most; of one that stands
     * in none, the class is unknown.
     *
     * @param low ids of techniques that cost little
     * @param middling ids of techniques between the two
     * @param high ids of techniques that cost much
     */
    public record CostClasses(Optional<Set<String>> low, Optional<Set<String>> middling, Optional<Set<String>> high) {

        /** The class of a technique; empty when the site gives none. */
        public Optional<CostClass> of(String technique) {
            for (CostClass each : CostClass.values()) {
                if (in(each).filter(ids -> ids.contains(technique)).isPresent()) {
                    return Optional.of(each);
                }
            }
            return Optional.empty();
        }

        private Optional<Set<String>> in(CostClass each) {
            return switch (each) {
                case LOW -> low;
                case MIDDLING -> middling;
                case HIGH -> high;
            };
        }
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
