package org.tunica.heat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.tunica.casefile.Faults;
import org.tunica.casefile.Nearest;

/**
 * Fits constants of the heat model to the bench measurements of a laboratory by least squares, each inside its range in
 * knowledge/. Depths of immediate and of delayed death are fitted. Char is a yes or no over a threshold that was set for
 * whole classes of devices and its index is not graded, so it is counted and not fitted.
 *
 * <p>Immutable; same file and constants, same report.
 */
public final class Calibration {
    /** Half the width of a difference, as a share of a range: the depths jump by some micrometres on their grid. */
    private static final double STEP_SHARE = 0.1;

    private static final double TOLERANCE = 1e-6;
    private static final double[] OTHER_STARTS = {0.25, 0.75};

    private final HeatNumbers numbers;
    private final HeatModel model;
    private final SortedSet<String> ids = new TreeSet<>();

    private Calibration(HeatNumbers numbers) {
        this.numbers = numbers;
        this.model = HeatModel.of(HeatConstants.from(id -> {
            ids.add(id);
            return numbers.value().applyAsDouble(id);
        }));
    }

    /** A calibration that starts from these constants and keeps to their ranges. */
    public static Calibration of(HeatNumbers numbers) {
        return new Calibration(numbers);
    }

    /**
     * Reads a bench file, see {@link BenchFile}.
     *
     * @param name of the file, for messages
     * @throws org.tunica.casefile.FaultyInput with every fault by line and column
     */
    public BenchFile read(String name, byte[] csv) {
        return new BenchReader(name, model).read(csv);
    }

    /** The constants with a range that move a depth of the file, out of those wanted, in order of id. */
    public List<String> acting(BenchFile bench, Predicate<String> wanted) {
        return ids.stream()
                .filter(wanted)
                .filter(this::ranged)
                .filter(id -> acts(bench, id))
                .toList();
    }

    /**
     * Fits constants to a bench file.
     *
     * @param freeIds constants that may move, each inside its range
     * @throws org.tunica.casefile.FaultyInput when a constant is not known, has no range or moves no depth, or when there
     *     are not more depths inside the wall than constants
     */
    public CalibrationReport fit(BenchFile bench, List<String> freeIds) {
        checkKnown(freeIds);
        checkEnough(bench, freeIds);
        List<FreeConstant> free = freeIds.stream().map(this::constant).toList();
        BenchPrediction prediction = new BenchPrediction(numbers, bench.rows(), free);
        BoundedFit problem = new BoundedFit(prediction::residuals, (int) bench.depths(), STEP_SHARE, TOLERANCE);
        List<BoundedFit.Rest> rests = starts(free).stream().map(problem::from).toList();
        return new ReportWriter(bench, free, prediction, problem).report(rests);
    }

    private void checkKnown(List<String> freeIds) {
        Faults faults = new Faults();
        Set<String> seen = new HashSet<>();
        for (String id : freeIds) {
            if (!ids.contains(id)) {
                faults.add(id, "is no constant of the heat model" + Nearest.hint(id, ids));
            } else if (!ranged(id)) {
                faults.add(id, "has no range in knowledge/, so nothing says how far it may move");
            }
            if (!seen.add(id)) {
                faults.add(id, "is named twice");
            }
        }
        faults.throwIfAny("free constants");
    }

    private void checkEnough(BenchFile bench, List<String> freeIds) {
        Faults faults = new Faults();
        if (freeIds.isEmpty()) {
            faults.add(bench.name(), "no constant is free");
        }
        if (bench.depthsInsideTheWall() <= freeIds.size()) {
            faults.add(
                    bench.name(),
                    "holds " + bench.depthsInsideTheWall() + " depths that end inside the wall; " + freeIds.size()
                            + " free constants need at least " + (freeIds.size() + 1));
        }
        freeIds.stream()
                .filter(id -> !acts(bench, id))
                .forEach(id -> faults.add(id, "moves no measured depth of any row, so nothing here can fit it"));
        faults.throwIfAny("calibration");
    }

    private boolean ranged(String id) {
        return numbers.low().applyAsDouble(id) < numbers.high().applyAsDouble(id);
    }

    private boolean acts(BenchFile bench, String id) {
        return new BenchPrediction(numbers, bench.rows(), List.of(constant(id))).anyDepthMoves();
    }

    private FreeConstant constant(String id) {
        return new FreeConstant(
                id,
                numbers.value().applyAsDouble(id),
                numbers.low().applyAsDouble(id),
                numbers.high().applyAsDouble(id));
    }

    /** The values of knowledge/ first; then places well inside the ranges, to notice a fit that stops at the first dip. */
    private static List<double[]> starts(List<FreeConstant> free) {
        List<double[]> starts = new ArrayList<>();
        starts.add(free.stream().mapToDouble(FreeConstant::share).toArray());
        for (double share : OTHER_STARTS) {
            starts.add(free.stream().mapToDouble(constant -> share).toArray());
        }
        return starts;
    }
}
