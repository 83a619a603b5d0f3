package org.tunica.outcomes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.Nearest;
import org.tunica.knowledge.Knowledge;

/**
 * Which past cases are looked at.
 *
 * @param site pseudonym of a clinic; absent for all
 * @param technique id; absent for all
 * @param fromYear first year of treatment; where a year is asked for, cases without one are left out
 * @param toYear last year
 * @param compare two techniques whose curves are held against each other, or none
 */
public record AuditQuestion(
        Optional<String> site,
        Optional<String> technique,
        OptionalInt fromYear,
        OptionalInt toYear,
        List<String> compare) {
    /** Everything there is. */
    public static final AuditQuestion ALL =
            new AuditQuestion(Optional.empty(), Optional.empty(), OptionalInt.empty(), OptionalInt.empty(), List.of());

    public AuditQuestion {
        compare = List.copyOf(compare);
    }

    /** @throws FaultyInput with everything that cannot be asked */
    void check(Knowledge knowledge) {
        List<Fault> faults = new ArrayList<>();
        technique.ifPresent(id -> known("technique", id, knowledge, faults));
        compare.forEach(id -> known("compare", id, knowledge, faults));
        if (!compare.isEmpty() && (compare.size() != 2 || compare.get(0).equals(compare.get(1)))) {
            faults.add(new Fault("compare", "must name two techniques, separated by a comma"));
        }
        if (technique.isPresent() && !compare.isEmpty()) {
            faults.add(new Fault("compare", "cannot be asked for together with a single technique"));
        }
        if (fromYear.orElse(Integer.MIN_VALUE) > toYear.orElse(Integer.MAX_VALUE)) {
            faults.add(new Fault("from", fromYear.getAsInt() + " is later than to " + toYear.getAsInt()));
        }
        if (!faults.isEmpty()) {
            throw new FaultyInput("input", faults);
        }
    }

    private static void known(String place, String id, Knowledge knowledge, List<Fault> faults) {
        if (!knowledge.techniqueIds().contains(id)) {
            faults.add(new Fault(
                    place, "there is no technique \"" + id + "\"" + Nearest.hint(id, knowledge.techniqueIds())));
        }
    }

    boolean holds(SegmentOutcome outcome) {
        boolean anyYear = fromYear.isEmpty() && toYear.isEmpty();
        boolean inYears = outcome.year().isPresent()
                && outcome.year().getAsInt() >= fromYear.orElse(Integer.MIN_VALUE)
                && outcome.year().getAsInt() <= toYear.orElse(Integer.MAX_VALUE);
        return (anyYear || inYears)
                && site.map(outcome.site()::equals).orElse(true)
                && technique.map(outcome.technique()::equals).orElse(true)
                && (compare.isEmpty() || compare.contains(outcome.technique()));
    }
}
