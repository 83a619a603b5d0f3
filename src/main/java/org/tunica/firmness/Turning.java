package org.tunica.firmness;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Measurement;
import org.tunica.plan.FirmnessAdvice.Change;
import org.tunica.plan.FirmnessAdvice.Change.Sought;
import org.tunica.plan.Rated;

/**
 * The smallest change of one measurement with which another technique would lead: outwards in growing steps within what is
 * plausible, then by halving the step that lost the place. A window narrower than the step may be stepped over.
 */
final class Turning {
    /** How far to look, in standard deviations. */
    private static final List<Double> NEAR_AND_FAR = List.of(0.25, 0.75, 2.25, 6.75);

    private static final int HALVINGS = 6;

    /** Nineteen of twenty measurements lie within; where one answer takes seconds, no more is looked at. */
    private static final List<Double> TWICE_THE_ERROR = List.of(2.0);

    private static final int FEW_HALVINGS = 3;

    /** In place of a standard deviation where none is known, a share of the value. */
    private static final double SHARE_OF_VALUE = 0.1;

    private final Knowledge knowledge;
    private final MeasurementDraws errors;

    Turning(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.errors = new MeasurementDraws(knowledge);
    }

    /** For each measurement the nearer of its two directions, heat settings kept; the nearest first. */
    List<Change> of(Situation measured, Trials trials) {
        Optional<String> leads = Rated.first(trials.of(measured).rated());
        List<Change> changes = new ArrayList<>();
        for (MeasuredNumber number : MeasuredNumber.values()) {
            DoubleFunction<Optional<String>> kept =
                    value -> Rated.first(trials.of(number.with(measured, value)).rated());
            Sought sought = number.setsHeat() ? Sought.SETTINGS_KEPT : Sought.CONFIRMED;
            nearest(measured, number, new TurnSearch(leads, kept, NEAR_AND_FAR, HALVINGS))
                    .map(found -> change(measured, number, found, kept.apply(found.lost()), sought))
                    .ifPresent(changes::add);
        }
        return nearestFirst(changes);
    }

    /**
     * The change of one measurement that the whole engine finds within twice its error.
     *
     * @param whole who leads with another value, every setting sought anew
     */
    Optional<Change> bySettingsSought(
            Situation measured, MeasuredNumber number, Optional<String> leads, DoubleFunction<Optional<String>> whole) {
        return nearest(measured, number, new TurnSearch(leads, whole, TWICE_THE_ERROR, FEW_HALVINGS))
                .map(found -> change(measured, number, found, whole.apply(found.lost()), Sought.SOUGHT_ANEW));
    }

    static List<Change> nearestFirst(List<Change> changes) {
        return changes.stream()
                .sorted(Comparator.comparingDouble(Turning::far).thenComparing(Change::measurement))
                .toList();
    }

    /** In steps alike for all: standard deviations, or tenths of the value. */
    private static double far(Change change) {
        return change.deviations().orElse(Math.abs(change.by()) / Math.abs(change.recorded() * SHARE_OF_VALUE));
    }

    private Optional<Bracket> nearest(Situation measured, MeasuredNumber number, TurnSearch search) {
        OptionalDouble value = number.in(measured);
        if (value.isEmpty()) {
            return Optional.empty();
        }
        double deviation = errors.deviation(number, measured).orElse(Math.abs(value.getAsDouble()) * SHARE_OF_VALUE);
        return search.nearest(
                value.getAsDouble(), deviation, measurement(number).range());
    }

    private Measurement measurement(MeasuredNumber number) {
        return knowledge.measurements().get(number.path());
    }

    private Change change(
            Situation measured, MeasuredNumber number, Bracket found, Optional<String> leads, Sought sought) {
        double recorded = number.in(measured).orElseThrow();
        double by = found.lost() - recorded;
        OptionalDouble deviation = errors.deviation(number, measured);
        return new Change(
                number.path(),
                knowledge.glossary().fields().get(number.fieldId()).noun(),
                recorded,
                found.lost(),
                found.held(),
                Shares.readable(by),
                measurement(number).range().unit(),
                deviation.orElse(0) > 0
                        ? OptionalDouble.of(Shares.readable(Math.abs(by) / deviation.getAsDouble()))
                        : OptionalDouble.empty(),
                leads,
                sought);
    }
}
