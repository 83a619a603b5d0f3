package org.tunica.treatment;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The numbers of heat given over a length, completed by what follows from them:
 *
 * <pre>linear energy = power x pullback,   energy = power x time = linear energy x length,   time = pullback x length</pre>
 *
 * Arithmetic of this project (S-0902); why power and pullback belong to a linear energy: S-0027.
 */
public final class HeatBalance {
    private static final double MM_PER_CM = 10;

    /** A number of the balance. */
    public enum Number {
        POWER("power", "W"),
        PULLBACK("pullback", "s/cm"),
        LINEAR_ENERGY("linear energy", "J/cm"),
        ENERGY("energy", "J"),
        TIME("time", "s"),
        LENGTH("length", "cm");

        private final String says;
        private final String unit;

        Number(String says, String unit) {
            this.says = says;
            this.unit = unit;
        }

        String says() {
            return says;
        }

        String with(double value) {
            return Rounded.text(value) + " " + unit;
        }
    }

    private record Product(Number whole, Number one, Number other) {}

    private static final List<Product> PRODUCTS = List.of(
            new Product(Number.ENERGY, Number.POWER, Number.TIME),
            new Product(Number.LINEAR_ENERGY, Number.POWER, Number.PULLBACK),
            new Product(Number.ENERGY, Number.LINEAR_ENERGY, Number.LENGTH),
            new Product(Number.TIME, Number.PULLBACK, Number.LENGTH));

    private final Map<Number, Double> values = new EnumMap<>(Number.class);
    private final List<Number> computed = new ArrayList<>();
    private final List<String> contradictions = new ArrayList<>();

    private HeatBalance() {}

    /**
     * Completes what was recorded.
     *
     * @param wholeCm length treated, for heat that names no length of its own
     * @param agreement how far two ways to the same number may differ, as a share
     */
    public static HeatBalance of(DeliveredHeat heat, OptionalDouble wholeCm, double agreement) {
        HeatBalance balance = new HeatBalance();
        balance.take(Number.POWER, heat.powerW());
        balance.take(Number.PULLBACK, heat.pullbackSecondsPerCm());
        balance.take(Number.LINEAR_ENERGY, heat.leedJPerCm());
        balance.take(Number.ENERGY, heat.totalEnergyJ());
        balance.take(Number.TIME, heat.heatingSeconds());
        balance.take(Number.LENGTH, heat.lengthCm().isPresent() ? heat.lengthCm() : wholeCm);
        balance.speed(heat.pullbackMmPerS(), agreement);
        // a contact element gives its power as it needs it and rests between positions: nothing follows from its
        // numbers
        if (heat.cycles().isEmpty()) {
            balance.complete();
        }
        balance.compare(agreement);
        return balance;
    }

    private void take(Number number, OptionalDouble value) {
        value.ifPresent(known -> values.put(number, known));
    }

    private void speed(OptionalDouble mmPerS, double agreement) {
        if (mmPerS.isEmpty()) {
            return;
        }
        double secondsPerCm = MM_PER_CM / mmPerS.getAsDouble();
        Double recorded = values.putIfAbsent(Number.PULLBACK, secondsPerCm);
        if (recorded != null && Agreement.broken(secondsPerCm, recorded, agreement)) {
            contradictions.add("the pullback of " + Number.PULLBACK.with(recorded) + " differs from "
                    + Rounded.text(mmPerS.getAsDouble()) + " mm/s, which is " + Number.PULLBACK.with(secondsPerCm)
                    + percent(recorded, secondsPerCm) + allowed(agreement));
        }
    }

    private void complete() {
        int before;
        do {
            before = values.size();
            PRODUCTS.forEach(this::complete);
        } while (values.size() > before);
    }

    private void complete(Product product) {
        boolean whole = values.containsKey(product.whole());
        boolean one = values.containsKey(product.one());
        boolean other = values.containsKey(product.other());
        if (!whole && one && other) {
            compute(product.whole(), values.get(product.one()) * values.get(product.other()));
        } else if (whole && one && !other) {
            compute(product.other(), values.get(product.whole()) / values.get(product.one()));
        } else if (whole && !one && other) {
            compute(product.one(), values.get(product.whole()) / values.get(product.other()));
        }
    }

    private void compute(Number number, double value) {
        values.put(number, value);
        computed.add(number);
    }

    private void compare(double agreement) {
        for (Product product : PRODUCTS) {
            if (values.keySet().containsAll(List.of(product.whole(), product.one(), product.other()))) {
                compare(product, agreement);
            }
        }
    }

    private void compare(Product product, double agreement) {
        double whole = values.get(product.whole());
        double one = values.get(product.one());
        double other = values.get(product.other());
        if (Agreement.broken(one * other, whole, agreement)) {
            contradictions.add("the " + product.whole().says + " of "
                    + product.whole().with(whole) + " differs from " + product.one().says + " x "
                    + product.other().says + ", " + product.one().with(one) + " x "
                    + product.other().with(other) + " = " + product.whole().with(one * other)
                    + percent(whole, one * other) + allowed(agreement));
        }
    }

    private static String percent(double recorded, double product) {
        return ", by " + Rounded.text(100 * Math.abs(recorded - product) / product) + " %";
    }

    private static String allowed(double agreement) {
        return "; at most " + Rounded.text(100 * agreement) + " % is accepted";
    }

    /** A number, recorded or computed. */
    public OptionalDouble value(Number number) {
        Double value = values.get(number);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** Whether a number follows from the others and was not recorded. */
    public boolean computed(Number number) {
        return computed.contains(number);
    }

    /** Where the recorded numbers contradict each other, with both numbers; empty when they agree. */
    public List<String> contradictions() {
        return List.copyOf(contradictions);
    }
}
