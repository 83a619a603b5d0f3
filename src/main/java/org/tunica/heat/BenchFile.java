package org.tunica.heat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The bench measurements of one laboratory.
 *
 * <p>A table of comma-separated values in UTF-8 with a header; any order of columns:
 *
 * <pre>
 * device             a device of the heat model
 * power_w            for what is drawn back
 * pullback_s_per_cm  for what is drawn back
 * cycles             for a contact element
 * pulses_per_cm      for steam
 * wall_mm            wall on the device
 * tumescent_mm       0 for none
 * tumescent_c        of wall and tumescent layer when heating starts
 * killed_mm          immediate death from the inner face; wall_mm when the whole wall was dead
 * delayed_mm         delayed death, immediate death included
 * char_seen          yes or no
 * killed_sd_mm, delayed_sd_mm   may be left out
 * </pre>
 *
 * An empty cell was not measured. Lines that start with {@code #} are comments; one of those above the header may read
 * {@code # date: 2026-03-01}, the day of the measurements. Under a forward tip the depths are those of the far side.
 *
 * @param name of the file, for messages
 * @param date day of the measurements, when the file names it
 */
public record BenchFile(String name, Optional<LocalDate> date, List<BenchRow> rows) {
    /** The largest file read, in bytes. */
    public static final int LARGEST_BYTES = 1_000_000;

    /** The most rows read: each is computed some hundred times. */
    public static final int MOST_ROWS = 500;

    public BenchFile {
        rows = List.copyOf(rows);
    }

    /** Number of depths measured. */
    public long depths() {
        return rows.stream().flatMap(BenchRow::depths).count();
    }

    /** Number of depths that ended inside the wall. */
    public long depthsInsideTheWall() {
        return rows.stream()
                .flatMap(row -> row.depths().filter(depth -> !row.wholeWall(depth)))
                .count();
    }

    /** Number of settings and slices that differ from each other. */
    public int conditions() {
        List<BenchRow> different = new ArrayList<>();
        for (BenchRow row : rows) {
            if (different.stream().noneMatch(row::sameConditions)) {
                different.add(row);
            }
        }
        return different.size();
    }

    /** Whether the depths come with their standard deviations. */
    public boolean withDeviations() {
        return rows.stream()
                .flatMap(BenchRow::depths)
                .anyMatch(depth -> depth.sdMm().isPresent());
    }
}
