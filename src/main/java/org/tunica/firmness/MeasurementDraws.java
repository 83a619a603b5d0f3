package org.tunica.firmness;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Measurement;

/**
 * A segment as it might really be: every measurement of known error is off by a normal deviate of it, and drawn again while
 * that is no plausible value. A measurement without a standard deviation, of its own or in measurements.yaml, is taken as
 * exact.
 */
final class MeasurementDraws {
    private static final int MOST_TRIES = 1000;

    private final Knowledge knowledge;

    MeasurementDraws(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    List<Situation> of(Situation measured, int draws, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Situation> drawn = new ArrayList<>();
        for (int draw = 0; draw < draws; draw++) {
            Situation situation = measured;
            for (MeasuredNumber number : MeasuredNumber.values()) {
                situation = drawn(number, situation, random);
            }
            drawn.add(situation);
        }
        return drawn;
    }

    private Situation drawn(MeasuredNumber number, Situation situation, SplittableRandom random) {
        OptionalDouble value = number.in(situation);
        double deviation = deviation(number, situation).orElse(0);
        if (value.isEmpty() || deviation == 0) {
            return situation;
        }
        Measurement measurement = knowledge.measurements().get(number.path());
        for (int tries = 0; tries < MOST_TRIES; tries++) {
            double off = value.getAsDouble() + deviation * normal(random);
            if (off >= measurement.range().min() && off <= measurement.range().max()) {
                return number.with(situation, off);
            }
        }
        return situation;
    }

    /** The standard deviation of a measurement: its own, or the usual one; empty where neither is known. */
    OptionalDouble deviation(MeasuredNumber number, Situation situation) {
        OptionalDouble own = number.deviationIn(situation);
        return own.isPresent()
                ? own
                : knowledge.measurements().get(number.path()).sd();
    }

    /** A standard normal deviate (Box and Muller, Ann Math Stat 1958;29:610), the same on every machine. */
    private static double normal(SplittableRandom random) {
        return StrictMath.sqrt(-2 * StrictMath.log(1 - random.nextDouble()))
                * StrictMath.cos(2 * Math.PI * random.nextDouble());
    }
}
