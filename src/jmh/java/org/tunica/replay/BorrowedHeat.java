package org.tunica.replay;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.tunica.heat.MeasurementSpread;
import org.tunica.physics.HeatOutlook;
import org.tunica.physics.HeatQuestion;
import org.tunica.physics.Physics;

/**
 * Answers of the heat model borrowed from a similar wall, so that a hundred thousand cases have some: to time a replay, and for
 * nothing else. To seek them all takes hours.
 */
final class BorrowedHeat {
    private static final double WALL_STEP_MM = 0.2;
    private static final double FEWEST_STEPS = 2;
    private static final double MOST_STEPS = 5;
    private static final double FAR_MM = 10;

    private final Physics physics;
    private final Map<HeatQuestion, HeatOutlook> lenders = new ConcurrentHashMap<>();

    BorrowedHeat(Physics physics) {
        this.physics = physics;
    }

    HeatOutlook answer(HeatQuestion question) {
        double steps = Math.min(MOST_STEPS, Math.max(FEWEST_STEPS, Math.rint(question.wallMm() / WALL_STEP_MM)));
        HeatQuestion lender = new HeatQuestion(
                question.device(),
                steps * WALL_STEP_MM,
                question.blood(),
                question.chilled(),
                FAR_MM,
                FAR_MM,
                new MeasurementSpread(WALL_STEP_MM, 1, 1, 1));
        HeatOutlook lent = lenders.computeIfAbsent(lender, physics::heatOutlook);
        return new HeatOutlook(
                lent.radiusMm(), question.wallMm(), Optional.of(lent.proposed().orElseThrow()), "");
    }
}
