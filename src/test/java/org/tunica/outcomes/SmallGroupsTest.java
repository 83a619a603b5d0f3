package org.tunica.outcomes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What is hidden, and that nobody can work it out. */
class SmallGroupsTest {
    private static final int K = 5;
    private static final SmallGroups SMALL = new SmallGroups(K);

    @Test
    void aSmallGroup_isHidden_andTheNextSmallestWithIt() {
        assertEquals(hidden(false, 1, 3), SMALL.hidden(List.of(60, 3, 20, 9)));
    }

    @Test
    void twoSmallGroups_needNoThird_unlessTheirSumTellsThem() {
        assertEquals(hidden(false, 1, 2), SMALL.hidden(List.of(60, 3, 4, 9)));
        assertEquals(hidden(false, 1, 2, 3), SMALL.hidden(List.of(60, 4, 4, 9)), "a sum of 8 leaves 4 and 4 alone");
        assertEquals(hidden(false, 1, 2, 3), SMALL.hidden(List.of(60, 1, 1, 9)), "two together are few themselves");
    }

    @Test
    void whereHidingTheNextWouldLeaveNothing_theSumIsHidden() {
        assertEquals(hidden(true, 1), SMALL.hidden(List.of(97, 3)));
        assertEquals(hidden(true, 0), SMALL.hidden(List.of(3)));
    }

    @Test
    void largeAndEmptyGroups_areTold() {
        assertEquals(hidden(false), SMALL.hidden(List.of(5, 0, 7)));
        assertEquals(hidden(false), SMALL.hidden(List.of()));
    }

    @Test
    void aPersonWithManySegments_countsOnce() {
        SegmentOutcome one = Past.outcome(Past.number(1).seen(Past.closed(7)));
        assertEquals(1, SmallGroups.people(List.of(one, one, one, one, one, one)));
        assertTrue(SMALL.few(SmallGroups.people(List.of(one, one, one, one, one, one))));
        assertFalse(SMALL.few(0));
    }

    /** Whoever knows k, the sum and which groups are hidden still finds two ways at least for each small one. */
    @Test
    void nobodyWorksOutAHiddenGroup() {
        SplittableRandom random = new SplittableRandom(7);
        int looked = 0;
        for (int trial = 0; trial < 4_000; trial++) {
            List<Integer> people = new ArrayList<>();
            int groups = 1 + random.nextInt(5);
            for (int i = 0; i < groups; i++) {
                people.add(random.nextInt(9));
            }
            SmallGroups.Hidden hidden = SMALL.hidden(people);
            for (int place = 0; place < groups; place++) {
                if (SMALL.few(people.get(place))) {
                    assertTrue(hidden.groups().contains(place));
                    if (!hidden.total()) {
                        Set<Integer> possible = possible(place, people, List.copyOf(hidden.groups()));
                        assertTrue(possible.size() > 1, people + " tells " + possible + " at " + place);
                        looked++;
                    }
                }
            }
        }
        assertTrue(looked > 1_000, "only " + looked + " looked at");
    }

    /** Every size a small group could have, by trying all sizes of all hidden groups. */
    private static Set<Integer> possible(int place, List<Integer> people, List<Integer> hidden) {
        int sum = hidden.stream().mapToInt(people::get).sum();
        Set<Integer> found = new HashSet<>();
        tryAll(hidden, 0, new int[hidden.size()], sum, people, sizes -> found.add(sizes[hidden.indexOf(place)]));
        return found;
    }

    private static void tryAll(
            List<Integer> hidden,
            int at,
            int[] sizes,
            int left,
            List<Integer> people,
            java.util.function.Consumer<int[]> fits) {
        if (at == hidden.size()) {
            if (left == 0) {
                fits.accept(sizes);
            }
            return;
        }
        boolean few = SMALL.few(people.get(hidden.get(at)));
        for (int size = few ? 1 : K; size <= (few ? Math.min(K - 1, left) : left); size++) {
            sizes[at] = size;
            tryAll(hidden, at + 1, sizes, left - size, people, fits);
        }
    }

    @Test
    void withoutALeastSize_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> new SmallGroups(0));
    }

    private static SmallGroups.Hidden hidden(boolean total, Integer... groups) {
        return new SmallGroups.Hidden(Set.of(groups), total);
    }
}
