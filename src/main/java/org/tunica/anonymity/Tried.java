package org.tunica.anonymity;

import java.util.Comparator;
import java.util.List;

/**
 * What one recoding does to a table.
 *
 * @param lossShare 0 nothing is lost to 1 everything
 * @param heldBack records in groups smaller than the k asked for
 */
public record Tried(Recoding recoding, double lossShare, int k, int distinctL, int heldBack) {
    /** Every recoding of a table, the mildest first; of two as mild the one that holds back less. */
    public static List<Tried> all(List<Row> rows, List<Ladder> ladders, int k) {
        return Recoding.all(ladders).stream()
                .map(recoding -> of(rows, ladders, recoding, k))
                .sorted(Comparator.comparingDouble(Tried::lossShare)
                        .thenComparingInt(Tried::heldBack)
                        .thenComparing(tried -> tried.recoding().rungs().toString()))
                .toList();
    }

    private static Tried of(List<Row> rows, List<Ladder> ladders, Recoding recoding, int k) {
        Alikeness alike = Alikeness.of(rows, ladders, recoding);
        return new Tried(recoding, recoding.lossShare(ladders), alike.k(), alike.distinctL(), alike.below(k));
    }
}
