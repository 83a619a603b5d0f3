package org.tunica.session;

import org.tunica.casefile.Segment;
import org.tunica.plan.OptionStanding;
import org.tunica.plan.SegmentAdvice;

/** Why a segment gets nothing in a plan, and what becomes of it. */
final class Leftover {
    private Leftover() {}

    static SessionPlan.Left of(SessionPlanner.Asked asked) {
        if (asked.segment().chosen().isPresent() && asked.candidates().isEmpty()) {
            return left(
                    asked,
                    SessionPlan.Leaving.REFER,
                    "the technique chosen for it, " + asked.segment().chosen().get() + ", is not ranked here or takes a"
                            + " dose that cannot be told");
        }
        if (!asked.candidates().isEmpty()) {
            return left(asked, SessionPlan.Leaving.LATER, "no session has room for it" + tributary(asked));
        }
        return stands(asked.advice(), OptionStanding.MEASURE_FIRST)
                ? left(asked, SessionPlan.Leaving.MEASURE_FIRST, first(asked, OptionStanding.MEASURE_FIRST))
                : left(
                        asked,
                        SessionPlan.Leaving.REFER,
                        "no technique can be ranked here; "
                                + asked.advice().options().get(0).why());
    }

    private static String first(SessionPlanner.Asked asked, OptionStanding standing) {
        return asked.advice().options().stream()
                .filter(option -> option.standing() == standing)
                .findFirst()
                .orElseThrow()
                .why();
    }

    private static String tributary(SessionPlanner.Asked asked) {
        return asked.segment().vein() == Segment.Vein.TRIBUTARY
                ? "; a branch may be left to shrink, or be taken out by phlebectomy"
                : "";
    }

    private static boolean stands(SegmentAdvice advice, OptionStanding standing) {
        return advice.options().stream().anyMatch(option -> option.standing() == standing);
    }

    private static SessionPlan.Left left(SessionPlanner.Asked asked, SessionPlan.Leaving leaving, String why) {
        return new SessionPlan.Left(asked.segment().ref(), asked.limb().side(), leaving, why);
    }
}
