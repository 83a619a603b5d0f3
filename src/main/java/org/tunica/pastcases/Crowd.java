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

    /** How many look like a case to an outsider, itself among them when it was added. */
    int alike(Profile profile, int k) {
        Set<String> rare = rare(profile.invented(), k);
        List<String> known = profile.known(rare);
        return counts.entrySet().stream()
                .filter(entry -> entry.getKey().invented() == profile.invented())
                .filter(entry -> entry.getKey().known(rare).equals(known))
                .mapToInt(entry -> sum(entry.getValue()))
                .sum();
    }

    /** The table an outsider sees; first of all whether a case is invented. */
    List<Row> rows(int k) {
        List<Row> rows = new ArrayList<>();
        Map<Boolean, Set<String>> rare = Map.of(true, rare(true, k), false, rare(false, k));
        counts.forEach((profile, learned) -> learned.forEach((what, count) -> {
            List<String> known = new ArrayList<>(List.of(profile.invented() ? "invented" : "real"));
            known.addAll(profile.known(rare.get(profile.invented())));
            rows.add(new Row(known, what, count));
        }));
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
