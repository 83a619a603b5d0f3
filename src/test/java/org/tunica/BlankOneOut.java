package org.tunica;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.physics.Derived;
import org.tunica.plan.Planner;
import org.tunica.plan.Rated;

/**
 * Removes each value of a case in turn and compares: no option may look better than before. An option looks better when
 * it enters the ranking, when its standing among the ranked improves, when it gains points, or when anything that settles
 * a tie does better. Whether an unranked option
 * is excluded or to be measured first is no improvement: neither may be chosen.
 */
public final class BlankOneOut {
    private BlankOneOut() {}

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
        Map<String, Rated> before = options(tunica, tree);
        for (String path : tree.blankable()) {
            Map<String, Rated> after = options(tunica, tree.copy().set(path, null));
            before.forEach((key, option) -> notBetter(path, key, option, after.get(key)));
        }
    }

    private static Map<String, Rated> options(Tunica tunica, CaseTree tree) {
        CaseFile caseFile = tunica.readCase("case", tree.bytes());
        Planner planner = PLANNERS.computeIfAbsent(tunica, BlankOneOut::planner);
        Map<String, Rated> options = new HashMap<>();
        for (Limb limb : caseFile.limbs()) {
            for (Segment segment : limb.segments()) {
                Derived derived = tunica.physics().derive(caseFile, segment);
                planner.rate(planner.considered(caseFile, limb, segment, derived))
                        .forEach(option -> options.put(segment.ref() + "/" + option.technique(), option));
            }
        }
        return options;
    }

    private static void notBetter(String path, String key, Rated before, Rated after) {
        boolean ranked = before.standing().ranked();
        boolean rankedAfter = after.standing().ranked();
        String what = "blanking " + path + " makes " + key + " go from " + before + " to " + after;
        assertTrue(ranked || !rankedAfter, what);
        if (ranked && rankedAfter) {
            assertTrue(after.standing().compareTo(before.standing()) >= 0, what);
            assertTrue(after.points() <= before.points(), what);
        }
        assertTrue(after.tie().deathShare() <= before.tie().deathShare(), what);
        assertTrue(after.tie().charShare() >= before.tie().charShare(), what);
        assertTrue(after.tie().nerveC() >= before.tie().nerveC(), what);
        assertTrue(after.tie().durabilityShare() <= before.tie().durabilityShare(), what);
    }
}
