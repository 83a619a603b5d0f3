package org.tunica.outcomes;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.tunica.casefile.Segment;
import org.tunica.treatment.ClosureDefinition;
import org.tunica.treatment.Complication;

/**
 * What became of one treated segment of a past case.
 *
 * @param pastCase id of the past case, which stands for the person
 * @param ref name of the segment in it
 * @param technique id of the technique really used
 * @param closure by which definition it counts as closed; absent when it was never followed
 * @param looks scans that told whether it was closed, in order
 * @param staying how long it stayed closed; absent when no scan told
 * @param complications what went wrong at any time, each kind once and with its gravest grade; absent when nobody asked
 * @param deepEnd what grew towards the deep vein, at its worst; absent when nobody looked
 */
public record SegmentOutcome(
        String pastCase,
        String ref,
        boolean invented,
        String site,
        OptionalInt year,
        Segment.Vein vein,
        Segment.Level level,
        String technique,
        Optional<ClosureDefinition> closure,
        List<Look> looks,
        Optional<Staying> staying,
        Optional<List<Complication>> complications,
        Optional<DeepEnd> deepEnd) {

    public SegmentOutcome {
        looks = List.copyOf(looks);
        complications = complications.map(List::copyOf);
    }

    /**
     * Whether it was closed at a horizon: by the scan in its window that lies nearest to its day, the later of two as near; absent
     * without such a scan.
     */
    public Optional<Boolean> closedAt(Horizon horizon) {
        return looks.stream()
                .filter(look -> horizon.holds(look.daysAfter()))
                .min(Comparator.comparingInt((Look look) -> horizon.away(look.daysAfter()))
                        .thenComparing(Look::daysAfter, Comparator.reverseOrder()))
                .map(Look::closed);
    }
}
