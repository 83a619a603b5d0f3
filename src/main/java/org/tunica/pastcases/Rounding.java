package org.tunica.pastcases;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.tunica.knowledge.Knowledge;

/** Rounds measurements to what is measured, so that no odd decimal leads back to a record. */
final class Rounding {
    private final Map<Step, BigDecimal> steps = new EnumMap<>(Step.class);

    Rounding(Knowledge knowledge) {
        for (Step step : Step.values()) {
            steps.put(step, BigDecimal.valueOf(knowledge.value(step.id())));
        }
    }

    OptionalDouble of(Step step, OptionalDouble value) {
        return value.isPresent() ? OptionalDouble.of(of(step, value.getAsDouble())) : value;
    }

    /** What is above nought stays above: nought is a finding of its own. */
    double of(Step step, double value) {
        BigDecimal size = steps.get(step);
        BigDecimal times = BigDecimal.valueOf(value).divide(size, 0, RoundingMode.HALF_UP);
        if (times.signum() == 0 && value > 0) {
            times = BigDecimal.ONE;
        }
        return times.multiply(size).doubleValue();
    }
}
