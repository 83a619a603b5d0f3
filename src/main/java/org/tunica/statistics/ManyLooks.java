package org.tunica.statistics;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which of many tests speak, when each of them is repeated again and again, and all of them together may raise a false alarm
 * only so often in a year. Over the tests of one look by Holm's steps (Holm, Scand J Stat 1979;6:65-70), over the looks by
 * sharing out the chance evenly (Bonferroni). Holds whatever the tests have to do with each other; with many looks it is
 * careful rather than quick.
 *
 * @param falseAlarmShare chance of any false alarm in a year
 * @param looksPerYear how often somebody looks
 */
public record ManyLooks(double falseAlarmShare, int looksPerYear) {
    public ManyLooks {
        Checked.properShare("falseAlarmShare", falseAlarmShare);
        Checked.atLeast("looksPerYear", looksPerYear, 1);
    }

    /** What is left of the chance for one look. */
    public double shareOfOneLook() {
        return falseAlarmShare / looksPerYear;
    }

    /**
     * Chances of all tests of one look, raised for their number; one that is at most {@link #shareOfOneLook} speaks.
     *
     * @param chanceProbabilities of each test by itself
     */
    public List<Double> adjusted(List<Double> chanceProbabilities) {
        int n = chanceProbabilities.size();
        int[] order = IntStream.range(0, n)
                .boxed()
                .sorted(Comparator.comparing(chanceProbabilities::get))
                .mapToInt(Integer::intValue)
                .toArray();
        Double[] adjusted = new Double[n];
        double highest = 0;
        for (int i = 0; i < n; i++) {
            highest = Math.max(highest, Math.min(1, (n - i) * chanceProbabilities.get(order[i])));
            adjusted[order[i]] = highest;
        }
        return Arrays.asList(adjusted);
    }

    /** Whether a test with such an adjusted chance speaks. */
    public boolean speaks(double adjusted) {
        return adjusted <= shareOfOneLook();
    }
}
