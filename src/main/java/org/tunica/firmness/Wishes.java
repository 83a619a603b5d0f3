package org.tunica.firmness;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
 * weighs; no source. A low cost class, where it is weighed, stands with the last two. What a patient wishes for goes one step
 * up. An order that the case itself gives goes before all that.
 */
final class Wishes {
    private final int draws;
    private final long seed;
    private final Map<List<Integer>, WeightTable> tables = new ConcurrentHashMap<>();

    Wishes(int draws, long seed) {
        this.draws = draws;
        this.seed = seed;
    }

    /**
     * What is wished for in a case, and the weights that agree with it.
     *
     * @param weighed criteria in their order, with or without the cost class
     */
    Wished of(CaseFile caseFile, List<Criterion> weighed) {
        List<Criterion> order = caseFile.importance().orElse(List.of());
        Set<Criterion> preferred = new TreeSet<>();
        preferences(caseFile.patient()).map(Wishes::criterion).forEach(preferred::add);
        List<Integer> groups = weighed.stream()
                .map(criterion -> group(criterion, order, preferred))
                .toList();
        return new Wished(
                order, says(caseFile.patient(), order, weighed), weighed, tables.computeIfAbsent(groups, this::table));
    }

    /** The cost class, the last of all, takes its weight from those that are there without it. */
    private WeightTable table(List<Integer> groups) {
        int always = Criterion.LOW_COST.ordinal();
        int[] others = groups.stream().mapToInt(Integer::intValue).limit(always).toArray();
        WeightTable table = WeightDraws.open(always).inOrder(others).table(draws, seed);
        return groups.size() == always ? table : new LaterWeight(others, groups.get(always)).beside(table, seed + 1);
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
            case SHORT_SESSION, FEW_NEEDLES, LOW_COST -> 2;
        };
    }

    private static List<String> says(Patient patient, List<Criterion> order, List<Criterion> weighed) {
        List<String> says = new ArrayList<>();
        if (!order.isEmpty()) {
            says.add(
                    "the case orders what matters: "
                            + order.stream().map(Criterion::says).collect(Collectors.joining(", then "))
                            + (order.containsAll(weighed) ? "" : ", then the rest")
                            + "; it moves weights among options of the same standing and lifts nothing over a caution or an exclusion");
        }
        cost(order, weighed).ifPresent(says::add);
        preferences(patient)
                .map(wish -> "the patient wishes to " + wish.word().replace('-', ' ') + ": "
                        + criterion(wish).says()
                        + (order.contains(criterion(wish))
                                ? " stands where the case puts it"
                                : " goes one step up in importance"))
                .forEach(says::add);
        return says;
    }

    /** Told where cost is weighed, or is not though the case orders it. */
    private static Optional<String> cost(List<Criterion> order, List<Criterion> weighed) {
        boolean ordered = order.contains(Criterion.LOW_COST);
        if (weighed.contains(Criterion.LOW_COST)) {
            return Optional.of("the site gives cost classes: "
                    + Criterion.LOW_COST.says()
                    + (ordered
                            ? " weighs where the case puts it"
                            : " weighs no more than closure, nerve, skin and rules")
                    + "; it lifts nothing over a caution or an exclusion");
        }
        return ordered
                ? Optional.of("cost is not weighed: no class that the site gives tells these techniques apart")
                : Optional.empty();
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
     * @param weighed criteria in the order of the weights
     */
    record Wished(List<Criterion> order, List<String> says, List<Criterion> weighed, WeightTable weights) {}
}
