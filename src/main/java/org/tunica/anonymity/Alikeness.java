package org.tunica.anonymity;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * How many records of a table look alike to an outsider.
 *
 * @param groups of records that look alike, the smallest first
 */
public record Alikeness(List<Group> groups) {
    public Alikeness {
        groups = List.copyOf(groups);
    }

    /**
     * Records that look alike.
     *
     * @param told what they have in common
     * @param size how many
     * @param different how many different things could be learned of them
     */
    public record Group(List<String> told, int size, int different) {}

    /** The table as it looks after a recoding. */
    public static Alikeness of(List<Row> rows, List<Ladder> ladders, Recoding recoding) {
        Map<List<String>, Integer> sizes = new HashMap<>();
        Map<List<String>, Set<String>> learned = new HashMap<>();
        Map<List<String>, List<String>> seen = new HashMap<>();
        for (Row row : rows) {
            List<String> told = seen.computeIfAbsent(row.known(), known -> recoding.of(ladders, known));
            sizes.merge(told, row.count(), Integer::sum);
            learned.computeIfAbsent(told, group -> new HashSet<>()).add(row.learned());
        }
        return new Alikeness(sizes.entrySet().stream()
                .map(entry -> new Group(
                        entry.getKey(),
                        entry.getValue(),
                        learned.get(entry.getKey()).size()))
                .sorted(Comparator.comparingInt(Group::size)
                        .thenComparing(group -> group.told().toString()))
                .toList());
    }

    /** k: the fewest that look alike; 0 of an empty table. */
    public int k() {
        return groups.stream().mapToInt(Group::size).min().orElse(0);
    }

    /** Distinct l: the fewest different things that could be learned of a group; 0 of an empty table. */
    public int distinctL() {
        return groups.stream().mapToInt(Group::different).min().orElse(0);
    }

    /** How many records stand in groups smaller than a k. */
    public int below(int k) {
        return groups.stream().mapToInt(Group::size).filter(size -> size < k).sum();
    }
}
