package org.tunica.firmness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.tunica.casefile.PlausibleRange;
import org.tunica.knowledge.Knowledge;
import org.tunica.physics.Derived;
import org.tunica.physics.Physics;
import org.tunica.plan.FirmnessAdvice;
import org.tunica.plan.FirmnessAdvice.Change;
import org.tunica.plan.Planner;
import org.tunica.plan.Rated;

/**
 * Looks at what would change a ranking once more with heat settings sought anew: for each measurement that has a part in a
 * heat setting it confirms or moves the change that was found with settings kept, and looks for one where none was found.
 */
final class WholeEngine {
    private final Knowledge knowledge;
    private final Physics physics;
    private final Planner planner;
    private final Turning turning;

    WholeEngine(Knowledge knowledge, Physics physics, Planner planner, Turning turning) {
        this.knowledge = knowledge;
        this.physics = physics;
        this.planner = planner;
        this.turning = turning;
    }

    FirmnessAdvice confirmed(Situation measured, FirmnessAdvice firmness) {
        Optional<String> leads = sought(measured);
        List<Change> changes = new ArrayList<>();
        for (MeasuredNumber number : MeasuredNumber.values()) {
            DoubleFunction<Optional<String>> whole = value -> sought(number.with(measured, value));
            Optional<Change> found = firmness.whatWouldChange().stream()
                    .filter(change -> change.measurement().equals(number.path()))
                    .findFirst();
            if (!number.setsHeat()) {
                found.ifPresent(changes::add);
            } else if (found.isPresent()) {
                changes.add(new Confirming(range(number), leads, whole).of(found.get()));
            } else {
                turning.bySettingsSought(measured, number, leads, whole).ifPresent(changes::add);
            }
        }
        return firmness.with(Turning.nearestFirst(changes));
    }

    private PlausibleRange range(MeasuredNumber number) {
        return knowledge.measurements().get(number.path()).range();
    }

    /** Who leads when every heat setting is sought for just this. */
    private Optional<String> sought(Situation situation) {
        Derived derived = physics.derive(situation.caseFile(), situation.segment());
        return Rated.first(
                planner.rate(planner.considered(situation.caseFile(), situation.limb(), situation.segment(), derived)));
    }
}
