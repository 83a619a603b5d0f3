package org.tunica.firmness;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What many draws of values and weights say about the rank of each option (SMAA-2). Options, criteria and ranks count
 * from 0. Immutable.
 */
final class Acceptability {
    private final int options;
    private final int criteria;
    private final int draws;
    private final long[] ranks;
    private final long[] wins;
    private final double[] central;
    private final long[] confirmed;

    /**
     * @param ranks how often option i took rank r, at {@code i * options + r}
     * @param wins how often option i came before option k, at {@code i * options + k}
     * @param central sum of the weights with which option i came first, by criterion
     * @param confirmed how often option i comes first when its central weights are taken
     */
    Acceptability(int options, int criteria, int draws, long[] ranks, long[] wins, double[] central, long[] confirmed) {
        this.options = options;
        this.criteria = criteria;
        this.draws = draws;
        this.ranks = ranks;
        this.wins = wins;
        this.central = central;
        this.confirmed = confirmed;
    }

    /** Number of draws behind every share. */
    int draws() {
        return draws;
    }

    /** Share of draws in which an option takes a rank, 0 to 1. */
    double share(int option, int rank) {
        return (double) ranks[option * options + rank] / draws;
    }

    /** Share of draws in which an option comes first, 0 to 1. */
    double firstShare(int option) {
        return share(option, 0);
    }

    /** Share of draws in which one option comes before another, 0 to 1. */
    double winShare(int option, int other) {
        return (double) wins[option * options + other] / draws;
    }

    /** The mean of the weights with which an option comes first, what one who chooses it holds; none when it never does. */
    Optional<double[]> centralWeights(int option) {
        long first = ranks[option * options];
        if (first == 0) {
            return Optional.empty();
        }
        double[] weights = new double[criteria];
        for (int j = 0; j < criteria; j++) {
            weights[j] = central[option * criteria + j] / first;
        }
        return Optional.of(weights);
    }

    /** Share of draws of values in which an option comes first with its central weights; none when it never comes first. */
    OptionalDouble confidence(int option) {
        return ranks[option * options] == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of((double) confirmed[option] / draws);
    }
}
