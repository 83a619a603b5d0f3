package org.tunica.couch;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.physics.SettingReach;

/**
 * Power and pull-back as somebody typed them, with every fault; what was typed is kept.
 *
 * @param powerW as typed
 * @param pullbackSPerCm as typed
 * @param faults empty when both are numbers the heat model answers for
 */
record TypedSetting(String powerW, String pullbackSPerCm, List<String> faults) {
    TypedSetting {
        faults = List.copyOf(faults);
    }

    /** What can be done to a setting by one press of a button. */
    enum Move {
        LESS_POWER(-1, 0),
        MORE_POWER(1, 0),
        FASTER(0, -1),
        SLOWER(0, 1);

        private final int powers;
        private final int pullbacks;

        Move(int powers, int pullbacks) {
            this.powers = powers;
            this.pullbacks = pullbacks;
        }

        /** The move of a word such as {@code more-power}; an unknown word moves nothing. */
        static Optional<Move> named(String word) {
            return List.of(values()).stream()
                    .filter(move -> move.name().replace('_', '-').equalsIgnoreCase(word))
                    .findFirst();
        }
    }

    static TypedSetting of(String powerW, String pullbackSPerCm, SettingReach reach) {
        List<String> faults = new ArrayList<>();
        check(faults, "Power", powerW, reach.powerW(), "W");
        check(faults, "Pullback", pullbackSPerCm, reach.pullbackSPerCm(), "s/cm");
        return new TypedSetting(powerW, pullbackSPerCm, faults);
    }

    static TypedSetting of(double powerW, double pullbackSPerCm) {
        return new TypedSetting(plain(powerW), plain(pullbackSPerCm), List.of());
    }

    private static void check(List<String> faults, String what, String typed, SettingReach.Axis axis, String unit) {
        OptionalDouble value = number(typed);
        String range = plain(axis.min()) + " to " + plain(axis.max()) + " " + unit;
        if (value.isEmpty()) {
            faults.add(what + ": \"" + typed + "\" is no number; the model answers for " + range + ".");
        } else if (!axis.holds(value.getAsDouble())) {
            faults.add(what + ": the model answers for " + range + ", not for " + typed + ".");
        }
    }

    /** The same after the move of that word; without one, and when faulty, it stays as it is. */
    TypedSetting moved(String word, SettingReach reach) {
        Optional<Move> move = faults.isEmpty() ? Move.named(word) : Optional.empty();
        return move.map(by -> of(
                        reach.powerW().moved(watt(), by.powers),
                        reach.pullbackSPerCm().moved(sPerCm(), by.pullbacks)))
                .orElse(this);
    }

    double watt() {
        return number(powerW).orElseThrow();
    }

    double sPerCm() {
        return number(pullbackSPerCm).orElseThrow();
    }

    private static OptionalDouble number(String typed) {
        try {
            double value = new BigDecimal(typed.strip().replace(',', '.')).doubleValue();
            return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }

    private static String plain(double value) {
        BigDecimal exact = BigDecimal.valueOf(value);
        return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
    }
}
