package org.tunica.pastcases;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.tunica.anonymity.Row;
import org.tunica.treatment.FollowUp;

/**
 * Among how many others each past case stands. It counts past cases; a person treated twice counts twice. It keeps counts
 * alone, so a base of any size goes through it once.
 */
final class Crowd {
    private final Map<Profile, Map<String, Integer>> counts = new HashMap<>();
    private final Map<String, Integer> having = new TreeMap<>();
    private int size;

    void add(Anonymous one) {
        Profile profile = Profile.of(one);
        counts.computeIfAbsent(profile, same -> new HashMap<>()).merge(learned(one.followUp()), 1, Integer::sum);
        profile.ails().forEach(ail -> having.merge(kind(one.invented()) + ail, 1, Integer::sum));
        size++;
    }

    /** The same crowd, to be added to by itself. */
    Crowd copy() {
        Crowd copy = new Crowd();
        counts.forEach((profile, learned) -> copy.counts.put(profile, new HashMap<>(learned)));
        copy.having.putAll(having);
        copy.size = size;
        return copy;
    }

    int size() {
        return size;
    }

    int invented() {
        return counts.entrySet().stream()
                .filter(entry -> entry.getKey().invented())
                .mapToInt(entry -> sum(entry.getValue()))
                .sum();
    }

    /** What fewer than k have, among the invented or among the real. */
    Set<String> rare(boolean invented, int k) {
        String kind = kind(invented);
        return having.entrySet().stream()
                .filter(entry -> entry.getKey().startsWith(kind) && entry.getValue() < k)
                .map(entry -> entry.getKey().substring(kind.length()))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** How many look alike to an outsider, by what is told of them. */
    Map<List<String>, Integer> sizes(int k) {
        Map<List<String>, Integer> sizes = new HashMap<>();
        rows(k).forEach(row -> sizes.merge(row.known(), row.count(), Integer::sum));
        return sizes;
    }

    /** What is told of a case in this crowd: whether it is invented, its profile, and what of it is rare here. */
    List<String> told(Profile profile, int k) {
        return told(profile, rare(profile.invented(), k));
    }

    private static List<String> told(Profile profile, Set<String> rare) {
        List<String> told = new ArrayList<>(List.of(kind(profile.invented()).strip()));
        told.addAll(profile.known(rare));
        return told;
    }

    /** The table an outsider sees. */
    List<Row> rows(int k) {
        List<Row> rows = new ArrayList<>();
        Map<Boolean, Set<String>> rare = Map.of(true, rare(true, k), false, rare(false, k));
        counts.forEach((profile, learned) -> {
            List<String> told = told(profile, rare.get(profile.invented()));
            learned.forEach((what, count) -> rows.add(new Row(told, what, count)));
        });
        return rows;
    }

    private static String kind(boolean invented) {
        return invented ? "invented " : "real ";
    }

    private static int sum(Map<String, Integer> counts) {
        return counts.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** What would be learned of somebody found: whether a vein was ever seen open again, and what went wrong. */
    private static String learned(FollowUp followUp) {
        Set<String> wrong = new TreeSet<>();
        boolean open = false;
        for (FollowUp.FollowedLimb limb : followUp.limbs()) {
            for (FollowUp.Visit visit : limb.visits()) {
                for (FollowUp.Seen seen : visit.segments().orElse(List.of())) {
                    open |= seen.openLengthCm().orElse(0) > 0;
                    seen.complications()
                            .ifPresent(all ->
                                    all.forEach(one -> wrong.add(one.kind().word())));
                }
            }
        }
        return (open ? "seen open" : "not seen open") + wrong;
    }
}
