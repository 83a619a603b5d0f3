package org.tunica;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.tunica.plan.Advice;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.Planner;

/**
 * Removes each value of a case in turn and compares: no option may look better than before. An option looks better when
 * it enters the ranking, when its standing among the ranked improves, or when it gains points. Whether an unranked option
 * is excluded or to be measured first is no improvement: neither may be chosen.
 */
public final class BlankOneOut {
    private BlankOneOut() {}

    private static final Advice.Release NO_RELEASE = new Advice.Release("0", Advice.Release.State.DRAFT, "none");

    /** The ranking alone is looked at: how firm it is costs more than the ranking and changes nothing of it. */
    private static final Map<Tunica, Planner> PLANNERS = new ConcurrentHashMap<>();

    private static Planner planner(Tunica tunica) {
        return new Planner(tunica.knowledge(), tunica.physics(), tunica.rules());
    }

    /** Cases already checked: many scenarios look at one case through different techniques. */
    private static final Set<String> CHECKED = ConcurrentHashMap.newKeySet();

    public static void check(Tunica tunica, CaseTree tree) {
        if (!CHECKED.add(System.identityHashCode(tunica) + tree.root().toString())) {
            return;
        }
        Map<String, OptionAdvice> before = options(tunica, tree);
        for (String path : tree.blankable()) {
            Map<String, OptionAdvice> after = options(tunica, tree.copy().set(path, null));
            before.forEach((key, option) -> notBetter(path, key, option, after.get(key)));
        }
    }

    private static Map<String, OptionAdvice> options(Tunica tunica, CaseTree tree) {
        Advice advice = PLANNERS.computeIfAbsent(tunica, BlankOneOut::planner)
                .advise(tunica.readCase("case", tree.bytes()), NO_RELEASE);
        Map<String, OptionAdvice> options = new HashMap<>();
        advice.segments()
                .forEach(segment -> segment.options()
                        .forEach(option -> options.put(segment.ref() + "/" + option.technique(), option)));
        return options;
    }

    private static void notBetter(String path, String key, OptionAdvice before, OptionAdvice after) {
        List<Boolean> ranked =
                List.of(before.standing().ranked(), after.standing().ranked());
        String what = "blanking " + path + " makes " + key + " go from " + before.standing() + " " + before.score()
                + " to " + after.standing() + " " + after.score();
        assertTrue(ranked.get(0) || !ranked.get(1), what);
        if (ranked.get(0) && ranked.get(1)) {
            assertTrue(after.standing().compareTo(before.standing()) >= 0, what);
            assertTrue(after.score().orElseThrow() <= before.score().orElseThrow(), what);
        }
    }
}
