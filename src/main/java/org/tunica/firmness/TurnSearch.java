package org.tunica.firmness;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.tunica.casefile.PlausibleRange;

/**
 * Looks outwards from a measured value, both ways, for the nearest at which another technique leads.
 *
 * @param leads the technique that leads as measured
 * @param first who leads with another value
 * @param deviations how far to look, in standard deviations, rising
 * @param halvings how often the step that lost the place is halved
 */
record TurnSearch(
        Optional<String> leads, DoubleFunction<Optional<String>> first, List<Double> deviations, int halvings) {

    Optional<Bracket> nearest(double value, double deviation, PlausibleRange range) {
        Optional<Bracket> down = towards(value, -deviation, range);
        Optional<Bracket> up = towards(value, deviation, range);
        if (down.isEmpty() || up.isEmpty()) {
            return down.or(() -> up);
        }
        return value - down.get().lost() < up.get().lost() - value ? down : up;
    }

    private Optional<Bracket> towards(double value, double step, PlausibleRange range) {
        double held = value;
        for (double far : deviations) {
            double tried = Math.max(range.min(), Math.min(range.max(), Shares.readable(value + far * step)));
            if (tried != held && turns(tried)) {
                return Optional.of(new Bracket(held, tried).halved(halvings, this::turns));
            }
            held = tried;
        }
        return Optional.empty();
    }

    private boolean turns(double tried) {
        return !first.apply(tried).equals(leads);
    }
}
