package org.tunica.session;

import java.util.ArrayList;
import java.util.List;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.OptionStanding;

/** Points of a choice in a plan: those of its standing and its own, in whole hundredths, never against the ranking. */
final class Worth {
    private static final double STEPS_PER_POINT = 100;

    private final SessionConstants constants;

    Worth(SessionConstants constants) {
        this.constants = constants;
    }

    /** The worth of each ranked option, best first: a better rank is always worth more. */
    List<Integer> of(List<OptionAdvice> ranked) {
        List<Integer> worths = new ArrayList<>();
        int above = Integer.MAX_VALUE;
        for (OptionAdvice option : ranked) {
            above = Math.max(1, Math.min(above - 1, steps(option)));
            worths.add(above);
        }
        return worths;
    }

    private int steps(OptionAdvice option) {
        return (int) Math.round(STEPS_PER_POINT
                * (ofStanding(option.standing()) + option.score().orElse(0)));
    }

    static double points(int worth) {
        return worth / STEPS_PER_POINT;
    }

    int aFurtherSession() {
        return (int) Math.round(STEPS_PER_POINT * constants.of("session.stage.points"));
    }

    private double ofStanding(OptionStanding standing) {
        return switch (standing) {
            case PREFERRED -> constants.of("session.points.preferred");
            case SUITABLE -> constants.of("session.points.suitable");
            case CAREFUL -> constants.of("session.points.careful");
            case MEASURE_FIRST, NOT_IN_ROOM, EXCLUDED -> throw new IllegalArgumentException("not ranked: " + standing);
        };
    }
}
