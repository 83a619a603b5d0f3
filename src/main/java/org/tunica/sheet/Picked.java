package org.tunica.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.PlainWay;
import org.tunica.knowledge.PlainWords;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.OptionStanding;
import org.tunica.plan.SegmentAdvice;

/**
 * What a sheet tells of one segment: the option a person chose, or every option that is ranked. The ways stand in the order
 * of their ids, never in that of the ranking.
 *
 * @param chosen whether a person chose
 * @param options what is told
 */
record Picked(SegmentAdvice segment, boolean chosen, List<OptionAdvice> options) {

    /**
     * @param technique id of the technique chosen
     * @throws FaultyInput when a rule excludes what is chosen: that must be settled before a patient reads about it
     */
    static Picked of(SegmentAdvice segment, Optional<String> technique) {
        if (technique.isEmpty()) {
            List<OptionAdvice> ranked = segment.options().stream()
                    .filter(option -> option.standing().ranked())
                    .toList();
            return new Picked(segment, false, ranked);
        }
        OptionAdvice option = segment.options().stream()
                .filter(one -> one.technique().equals(technique.get()))
                .findFirst()
                .orElseThrow();
        if (option.standing() == OptionStanding.EXCLUDED) {
            throw new FaultyInput(
                    "sheet",
                    List.of(new Fault(
                            "segment " + segment.ref(),
                            technique.get() + " is excluded here: " + option.why()
                                    + ". Settle this before a patient reads about it")));
        }
        return new Picked(segment, true, List.of(option));
    }

    /** The ways of its options, each once. */
    List<PlainWay> ways(PlainWords plain) {
        List<PlainWay> ways = new ArrayList<>();
        for (OptionAdvice option : options) {
            PlainWay way = plain.wayOf(option.technique());
            if (!ways.contains(way)) {
                ways.add(way);
            }
        }
        ways.sort(Comparator.comparing(PlainWay::id));
        return ways;
    }

    /** Its options that work one way. */
    List<OptionAdvice> of(PlainWay way) {
        return options.stream()
                .filter(option -> way.techniques().contains(option.technique()))
                .toList();
    }

    /** Whether every option of a way wants extra care here. */
    boolean careful(PlainWay way) {
        return of(way).stream().allMatch(option -> option.standing() == OptionStanding.CAREFUL);
    }

    /** Whether what is chosen still lacks a measurement. */
    boolean measureFirst() {
        return options.stream().anyMatch(option -> option.standing() == OptionStanding.MEASURE_FIRST);
    }
}
