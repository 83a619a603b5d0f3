package org.tunica.drawing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.tunica.knowledge.Family;
import org.tunica.plan.OptionStanding;

/**
 * One option on the strip.
 *
 * @param rank 1 is first; absent when not ranked
 * @param technique its id
 * @param says the technique in words
 * @param wallMm the wall in the state in which the technique acts
 * @param atOnce how deep it kills at once; absent when nothing was computed or the technique does not kill
 * @param later how deep it kills at once or later
 * @param beside nerve, then skin, as far as their distance is recorded
 * @param outcome what comes of it, in one line
 */
public record StripRow(
        OptionalInt rank,
        String technique,
        String says,
        Family family,
        OptionStanding standing,
        double wallMm,
        Optional<Reach> atOnce,
        Optional<Reach> later,
        List<Warmed> beside,
        String outcome) {
    public StripRow {
        beside = List.copyOf(beside);
    }

    /** What is killed sooner or later, whichever reaches further. */
    Optional<Reach> deepest() {
        return later.or(() -> atOnce);
    }
}
