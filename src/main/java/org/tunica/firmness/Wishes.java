package org.tunica.firmness;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.tunica.casefile.Patient;
import org.tunica.plan.FirmnessAdvice.Criterion;

/**
 * The order of importance that weights keep: closing the vein and sparing nerve and skin, as far as computed, published or
 * said by rules, weigh at least as much as a short session and few needles. That is how this project thinks a specialist
 * weighs; no source. What a patient wishes for goes one step up.
 */
final class Wishes {
    private final int draws;
    private final long seed;
    private final Map<Set<Criterion>, WeightTable> tables = new ConcurrentHashMap<>();

    Wishes(int draws, long seed) {
        this.draws = draws;
        this.seed = seed;
    }

    /** The weights that agree with what the patient wishes; the usual order when nothing is wished or nobody asked. */
    WeightTable weights(Patient patient) {
        Set<Criterion> wished = new TreeSet<>();
        wishes(patient).map(Wishes::criterion).forEach(wished::add);
        return tables.computeIfAbsent(wished, this::table);
    }

    private WeightTable table(Set<Criterion> wished) {
        int[] groups = Arrays.stream(Criterion.values())
                .mapToInt(criterion -> step(criterion) - (wished.contains(criterion) ? 1 : 0))
                .toArray();
        return WeightDraws.open(Weighing.COUNT).inOrder(groups).table(draws, seed);
    }

    private static int step(Criterion criterion) {
        return switch (criterion) {
            case WHOLE_WALL_KILL, NERVE_SAFETY, SKIN_SAFETY, DURABILITY, RULES -> 1;
            case SHORT_SESSION, FEW_NEEDLES -> 2;
        };
    }

    /** What the wishes mean, in words. */
    List<String> says(Patient patient) {
        return wishes(patient)
                .map(wish -> "the patient wishes to " + wish.word().replace('-', ' ') + ": "
                        + criterion(wish).says() + " goes one step up in importance")
                .toList();
    }

    private static Stream<Patient.Preference> wishes(Patient patient) {
        return patient.preferences().stream().flatMap(Set::stream).sorted();
    }

    private static Criterion criterion(Patient.Preference wish) {
        return switch (wish) {
            case AVOID_NEEDLES -> Criterion.FEW_NEEDLES;
            case AVOID_REPEAT -> Criterion.DURABILITY;
        };
    }
}
