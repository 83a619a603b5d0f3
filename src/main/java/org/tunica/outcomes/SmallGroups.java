package org.tunica.outcomes;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Which groups are too small to be told of: fewer than k past cases, for a past case stands for a person and several segments may
 * be of one. Where one hidden number could be worked out from the sum of all and the numbers shown, the next smallest is hidden
 * with it. How many veins of a group that is large enough opened again is the finding itself and is told.
 *
 * @param k fewest past cases of a group that is told of
 */
record SmallGroups(int k) {
    SmallGroups {
        if (k < 1) {
            throw new IllegalArgumentException("k must be at least 1, got " + k);
        }
    }

    static int people(Collection<SegmentOutcome> group) {
        return (int) group.stream().map(SegmentOutcome::pastCase).distinct().count();
    }

    /** Whether there are some and yet fewer than k. */
    boolean few(int people) {
        return people > 0 && people < k;
    }

    /**
     * What is hidden of several groups that share nobody.
     *
     * @param groups places in the list
     * @param total whether the number of all together is hidden too
     */
    record Hidden(Set<Integer> groups, boolean total) {}

    /**
     * What to hide: the small groups, and with them the next smallest until the sum of all gives none of them away; where nothing
     * would be left to tell, the sum instead.
     *
     * @param people past cases in each group
     */
    Hidden hidden(List<Integer> people) {
        Set<Integer> withSum = hiddenUnderKnownSum(people);
        List<Integer> there = there(people);
        Set<Integer> few = new TreeSet<>(there);
        few.removeIf(place -> !few(people.get(place)));
        if (withSum.equals(few)) {
            return new Hidden(few, givesAway(few, people));
        }
        return withSum.size() == there.size() ? new Hidden(few, true) : new Hidden(withSum, false);
    }

    /** The same where the sum is known anyway. */
    Set<Integer> hiddenUnderKnownSum(List<Integer> people) {
        List<Integer> there = there(people);
        Set<Integer> hidden = new TreeSet<>(there);
        hidden.removeIf(place -> !few(people.get(place)));
        for (int place : there) {
            if (!givesAway(hidden, people)) {
                break;
            }
            hidden.add(place);
        }
        return hidden;
    }

    /** Places of the groups with anybody in them, the smallest first. */
    private static List<Integer> there(List<Integer> people) {
        return IntStream.range(0, people.size())
                .boxed()
                .filter(place -> people.get(place) > 0)
                .sorted(Comparator.comparing(people::get))
                .toList();
    }

    /**
     * Whether the sum of the hidden groups tells one of the small ones, or that all of them together are few. Who knows k knows that
     * each small one has 1 to k - 1 and each of the others at least k, and at worst which is which.
     */
    private boolean givesAway(Set<Integer> hidden, List<Integer> people) {
        int small =
                (int) hidden.stream().filter(place -> few(people.get(place))).count();
        if (small == 0) {
            return false;
        }
        int sum = hidden.stream().mapToInt(people::get).sum();
        int others = hidden.size() - small;
        int most = Math.min(k - 1, sum - (small - 1) - others * k);
        int least = others > 0 ? 1 : Math.max(1, sum - (small - 1) * (k - 1));
        return least >= most || sum < k;
    }
}
