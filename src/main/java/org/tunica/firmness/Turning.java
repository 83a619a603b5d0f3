package org.tunica.firmness;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.casefile.PlausibleRange;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Measurement;
import org.tunica.plan.FirmnessAdvice;
import org.tunica.plan.FirmnessAdvice.Change.Sought;
import org.tunica.plan.Rated;

/**
 * The smallest change of one measurement with which another technique would lead: outwards in growing steps within what is
 * plausible, then by halving the step that lost the place. A window narrower than the step may be stepped over.
 */
final class Turning {
    private static final double FIRST_STEP = 0.25;
    private static final double STEP_GROWS = 3;
    private static final int STEPS = 4;
    private static final int HALVINGS = 6;

    /** The step is this share of the value where no standard deviation is known. */
    private static final double SHARE_OF_VALUE = 0.1;

    private final Knowledge knowledge;
    private final MeasurementDraws errors;

    Turning(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.errors = new MeasurementDraws(knowledge);
    }

    /** For each measurement the nearer of its two directions, the nearest first. */
    List<FirmnessAdvice.Change> of(Situation measured, Trials trials) {
        Optional<String> leads = Rated.first(trials.of(measured).rated());
        List<FirmnessAdvice.Change> changes = new ArrayList<>();
        for (MeasuredNumber number : MeasuredNumber.values()) {
            number.in(measured).ifPresent(value -> {
                Search search = new Search(measured, trials, leads, number, value);
                search.nearest().ifPresent(at -> changes.add(search.change(at)));
            });
        }
        return changes.stream()
                .sorted(Comparator.comparingDouble(Turning::far).thenComparing(FirmnessAdvice.Change::measurement))
                .toList();
    }

    /** In steps alike for all: standard deviations, or tenths of the value. */
    private static double far(FirmnessAdvice.Change change) {
        return change.deviations().orElse(Math.abs(change.by()) / Math.abs(change.recorded() * SHARE_OF_VALUE));
    }

    private final class Search {
        private final Situation measured;
        private final Trials trials;
        private final Optional<String> leads;
        private final MeasuredNumber number;
        private final double value;
        private final Measurement measurement;
        private final OptionalDouble deviation;

        Search(Situation measured, Trials trials, Optional<String> leads, MeasuredNumber number, double value) {
            this.measured = measured;
            this.trials = trials;
            this.leads = leads;
            this.number = number;
            this.value = value;
            this.measurement = knowledge.measurements().get(number.path());
            this.deviation = errors.deviation(number, measured);
        }

        Optional<Bracket> nearest() {
            Optional<Bracket> down = towards(-1);
            Optional<Bracket> up = towards(1);
            if (down.isEmpty() || up.isEmpty()) {
                return down.or(() -> up);
            }
            return value - down.get().lost() < up.get().lost() - value ? down : up;
        }

        private Optional<Bracket> towards(int direction) {
            double step = FIRST_STEP * deviation.orElse(Math.abs(value) * SHARE_OF_VALUE);
            double held = value;
            for (int i = 0; step > 0 && i < STEPS; i++, step *= STEP_GROWS) {
                double tried = plausible(Shares.readable(value + direction * step));
                if (tried != held && turns(tried)) {
                    return Optional.of(new Bracket(held, tried).halved(HALVINGS, this::turns));
                }
                held = tried;
            }
            return Optional.empty();
        }

        private double plausible(double tried) {
            PlausibleRange range = measurement.range();
            return Math.max(range.min(), Math.min(range.max(), tried));
        }

        private boolean turns(double tried) {
            return !first(tried).equals(leads);
        }

        private Optional<String> first(double tried) {
            return Rated.first(trials.of(number.with(measured, tried)).rated());
        }

        FirmnessAdvice.Change change(Bracket found) {
            double at = found.lost();
            double by = at - value;
            return new FirmnessAdvice.Change(
                    number.path(),
                    knowledge.glossary().fields().get(number.fieldId()).noun(),
                    value,
                    at,
                    found.held(),
                    Shares.readable(by),
                    measurement.range().unit(),
                    deviation.isPresent() && deviation.getAsDouble() > 0
                            ? OptionalDouble.of(Shares.readable(Math.abs(by) / deviation.getAsDouble()))
                            : OptionalDouble.empty(),
                    first(at),
                    number.setsHeat() ? Sought.SETTINGS_KEPT : Sought.CONFIRMED);
        }
    }
}
