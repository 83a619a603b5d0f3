package org.tunica.firmness;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Criterion;
import org.tunica.casefile.Patient;

/**
 * The order of importance that weights keep: closing the vein and sparing nerve and skin, as far as computed, published or
 * said by rules, weigh at least as much as a short session and few needles. That is how this project thinks a specialist
 * weighs; no source. What a patient wishes for goes one step up. An order that the case itself gives goes before both.
 */
final class Wishes {
    private final int draws;
    private final long seed;
    private final Map<List<Integer>, WeightTable> tables = new ConcurrentHashMap<>();

    Wishes(int draws, long seed) {
        this.draws = draws;
        this.seed = seed;
    }

    /** What is wished for in a case, and the weights that agree with it. */
    Wished of(CaseFile caseFile) {
        List<Criterion> order = caseFile.importance().orElse(List.of());
        Set<Criterion> preferred = new TreeSet<>();
        preferences(caseFile.patient()).map(Wishes::criterion).forEach(preferred::add);
        List<Integer> groups = Arrays.stream(Criterion.values())
                .map(criterion -> group(criterion, order, preferred))
                .toList();
        return new Wished(order, says(caseFile.patient(), order), tables.computeIfAbsent(groups, this::table));
    }

    private WeightTable table(List<Integer> groups) {
        return WeightDraws.open(Weighing.COUNT)
                .inOrder(groups.stream().mapToInt(Integer::intValue).toArray())
                .table(draws, seed);
    }

    /** What the case orders comes first, in its order; the rest keeps the usual steps behind it. */
    private static int group(Criterion criterion, List<Criterion> order, Set<Criterion> preferred) {
        return order.contains(criterion)
                ? order.indexOf(criterion)
                : order.size() + step(criterion) - (preferred.contains(criterion) ? 1 : 0);
    }

    private static int step(Criterion criterion) {
        return switch (criterion) {
            case WHOLE_WALL_KILL, NERVE_SAFETY, SKIN_SAFETY, DURABILITY, RULES -> 1;
            case SHORT_SESSION, FEW_NEEDLES -> 2;
        };
    }

    private static List<String> says(Patient patient, List<Criterion> order) {
        List<String> says = new ArrayList<>();
        if (!order.isEmpty()) {
            says.add(
                    "the case orders what matters: "
                            + order.stream().map(Criterion::says).collect(Collectors.joining(", then "))
                            + (order.size() < Criterion.values().length ? ", then the rest" : "")
                            + "; it moves weights among options of the same standing and lifts nothing over a caution or an exclusion");
        }
        preferences(patient)
                .map(wish -> "the patient wishes to " + wish.word().replace('-', ' ') + ": "
                        + criterion(wish).says()
                        + (order.contains(criterion(wish))
                                ? " stands where the case puts it"
                                : " goes one step up in importance"))
                .forEach(says::add);
        return says;
    }

    private static Stream<Patient.Preference> preferences(Patient patient) {
        return patient.preferences().stream().flatMap(Set::stream).sorted();
    }

    private static Criterion criterion(Patient.Preference wish) {
        return switch (wish) {
            case AVOID_NEEDLES -> Criterion.FEW_NEEDLES;
            case AVOID_REPEAT -> Criterion.DURABILITY;
        };
    }

    /**
     * What is wished for.
     *
     * @param order that the case gives, the most important first; empty for the usual one
     * @param says in words
     */
    record Wished(List<Criterion> order, List<String> says, WeightTable weights) {}
}
