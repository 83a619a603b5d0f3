package org.tunica.heat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** What the heat model says for every row of a bench file when some constants stand at other shares of their range. */
final class BenchPrediction {
    /** Two depths closer than this are the same, mm: far below anything a bench can tell. */
    private static final double SAME_MM = 1e-6;

    private final HeatNumbers numbers;
    private final List<BenchRow> rows;
    private final List<FreeConstant> free;

    BenchPrediction(HeatNumbers numbers, List<BenchRow> rows, List<FreeConstant> free) {
        this.numbers = numbers;
        this.rows = rows;
        this.free = free;
    }

    /** One run a row, in the order of the rows. */
    List<HeatRun> runs(double[] shares) {
        Map<String, Double> moved = new HashMap<>();
        for (int j = 0; j < free.size(); j++) {
            moved.put(free.get(j).id(), free.get(j).at(shares[j]));
        }
        HeatModel model = HeatModel.of(HeatConstants.from(
                id -> moved.containsKey(id) ? moved.get(id) : numbers.value().applyAsDouble(id)));
        return rows.stream().map(row -> model.run(row.setting(), row.slice())).toList();
    }

    /** One residual a depth, row by row: off in mm, or in standard deviations where those are given. */
    double[] residuals(double[] shares) {
        List<HeatRun> runs = runs(shares);
        return IntStream.range(0, rows.size())
                .boxed()
                .flatMap(r -> rows.get(r).offs(runs.get(r)).stream())
                .mapToDouble(BenchRow.Off::weighed)
                .toArray();
    }

    /** Whether the only free constant moves a measured depth between the ends of its range. */
    boolean anyDepthMoves() {
        List<HeatRun> low = runs(new double[] {0});
        List<HeatRun> high = runs(new double[] {1});
        for (int r = 0; r < rows.size(); r++) {
            List<BenchRow.Off> atLow = rows.get(r).offs(low.get(r));
            List<BenchRow.Off> atHigh = rows.get(r).offs(high.get(r));
            for (int i = 0; i < atLow.size(); i++) {
                if (Math.abs(atHigh.get(i).computedMm() - atLow.get(i).computedMm()) > SAME_MM) {
                    return true;
                }
            }
        }
        return false;
    }
}
