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

/** What a patient would rather have, as an order of weights: what is wished for weighs at least as much as anything else. */
final class Wishes {
    private final int draws;
    private final long seed;
    private final Map<Set<Criterion>, WeightTable> tables = new ConcurrentHashMap<>();

    Wishes(int draws, long seed) {
        this.draws = draws;
        this.seed = seed;
    }

    /** The weights that agree with what the patient wishes; all weights when nothing is wished or nobody asked. */
    WeightTable weights(Patient patient) {
        Set<Criterion> wished = new TreeSet<>();
        wishes(patient).map(Wishes::criterion).forEach(wished::add);
        return tables.computeIfAbsent(wished, this::table);
    }

    private WeightTable table(Set<Criterion> wished) {
        int[] groups = Arrays.stream(Criterion.values())
                .mapToInt(criterion -> wished.contains(criterion) ? 0 : 1)
                .toArray();
        return WeightDraws.open(Weighing.COUNT).inOrder(groups).table(draws, seed);
    }

    /** What the wishes mean, in words. */
    List<String> says(Patient patient) {
        return wishes(patient)
                .map(wish -> "the patient wishes to " + wish.word().replace('-', ' ') + ": "
                        + criterion(wish).says() + " weighs at least as much as what is not wished for")
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
