package org.tunica.statistics;

import java.util.stream.IntStream;

/** How seldom a chart should signal while results are as predicted. */
public sealed interface CusumWish {
    /** Cases after which a run need not be followed further. */
    int horizonCases();

    /** What runs did at some limit, and how far that figure may be off by the luck of the draw (one standard error). */
    Reached reached(int[] signalledAt);

    /** Whether that is seldom enough. */
    boolean met(Reached reached);

    /**
     * A figure and its standard error.
     *
     * @param value in the unit of the wish
     * @param standardError in the same unit
     */
    record Reached(double value, double standardError) {}

    /**
     * On average so many cases from the start to a false alarm: the in-control average run length.
     *
     * @param cases at least 2
     */
    record MeanCases(int cases) implements CusumWish {
        /** Runs are close to exponential, so one in e^50 is cut. */
        private static final int HORIZONS = 50;

        public MeanCases {
            Checked.within("cases", cases, 2, Integer.MAX_VALUE / HORIZONS);
        }

        @Override
        public int horizonCases() {
            return HORIZONS * cases;
        }

        @Override
        public Reached reached(int[] signalledAt) {
            double mean = IntStream.of(signalledAt).average().orElseThrow();
            double squares = IntStream.of(signalledAt)
                    .mapToDouble(at -> (at - mean) * (at - mean))
                    .sum();
            int runs = signalledAt.length;
            return new Reached(mean, Math.sqrt(squares / (runs - 1) / runs));
        }

        @Override
        public boolean met(Reached reached) {
            return reached.value() >= cases;
        }
    }

    /**
     * A false alarm within so many cases in no more than a share of all runs.
     *
     * @param alarmedShare such as 0.05
     * @param withinCases at least 1
     */
    record FalseAlarms(double alarmedShare, int withinCases) implements CusumWish {
        public FalseAlarms {
            Checked.properShare("alarmedShare", alarmedShare);
            Checked.within("withinCases", withinCases, 1, Integer.MAX_VALUE - 1);
        }

        @Override
        public int horizonCases() {
            return withinCases;
        }

        @Override
        public Reached reached(int[] signalledAt) {
            int runs = signalledAt.length;
            double alarmed = (double) IntStream.of(signalledAt)
                            .filter(at -> at <= withinCases)
                            .count()
                    / runs;
            return new Reached(alarmed, Math.sqrt(alarmed * (1 - alarmed) / runs));
        }

        @Override
        public boolean met(Reached reached) {
            return reached.value() <= alarmedShare;
        }
    }
}
