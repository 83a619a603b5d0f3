package org.tunica.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Published follow-up times. Weeks of remission of two groups of 21 from Freireich et al., Blood 1963;21:699-716, as textbooks
 * print them (from memory, checked against the published log-rank statistic below); a plus stands for censored. The statistics
 * count whole units of time; here they are weeks or, in the first, months.
 */
final class Remissions {
    /** Bewick, Cheek, Ball, Crit Care 2004;8:389-394, DOI 10.1186/cc2955, table 2. */
    static final List<FollowedCase> BEWICK = read("1 1 4 5 6+ 9 9+ 22");

    static final List<FollowedCase> TREATED =
            read("6 6 6 6+ 7 9+ 10 10+ 11+ 13 16 17+ 19+ 20+ 22 23 25+ 32+ 32+ 34+ 35+");
    static final List<FollowedCase> PLACEBO = read("1 1 2 2 3 4 4 5 5 8 8 8 8 11 11 12 12 15 17 22 23");

    /** Miller, Survival Analysis, 1981, as the data set aml of R's package survival: the maintained group, then the other. */
    static final List<FollowedCase> MAINTAINED = read("9 13 13+ 18 23 28+ 31 34 45+ 48 161+");

    static final List<FollowedCase> NOT_MAINTAINED = read("5 5 8 8 12 16+ 23 27 30 33 43 45");

    private Remissions() {}

    static List<FollowedCase> read(String times) {
        List<FollowedCase> read = new ArrayList<>();
        for (String time : times.split(" ")) {
            read.add(
                    time.endsWith("+")
                            ? new FollowedCase(Integer.parseInt(time.replace("+", "")), false)
                            : new FollowedCase(Integer.parseInt(time), true));
        }
        return read;
    }

    static List<FollowedCase> repeated(FollowedCase one, int times) {
        return IntStream.range(0, times).mapToObj(i -> one).toList();
    }
}
