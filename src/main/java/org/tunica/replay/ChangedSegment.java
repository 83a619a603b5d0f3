package org.tunica.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Word;

/**
 * A segment that does not come out the same.
 *
 * @param ref of the segment
 * @param gravity the worst of what happened to it
 * @param firstBefore id of the technique that led; absent when none did
 * @param firstAfter id of the technique that leads; absent when none does
 * @param options those that stand otherwise or have other settings, in the order of their ids
 * @param turns rules that say something else, in the order of their ids; empty when numbers alone moved
 */
public record ChangedSegment(
        String ref,
        Gravity gravity,
        Optional<String> firstBefore,
        Optional<String> firstAfter,
        List<ChangedOption> options,
        List<Turn> turns) {
    public ChangedSegment {
        options = List.copyOf(options);
        turns = List.copyOf(turns);
    }

    /** What of a segment can be another. */
    public enum Kind implements Word {
        FIRST_OPTION,
        STANDING,
        SETTINGS,
        REASONS
    }

    /** Every kind of change it shows; reasons alone only where there is nothing else. */
    public List<Kind> kinds() {
        List<Kind> kinds = new ArrayList<>();
        if (!firstBefore.equals(firstAfter)) {
            kinds.add(Kind.FIRST_OPTION);
        }
        if (options.stream().anyMatch(ChangedOption::standsOtherwise)) {
            kinds.add(Kind.STANDING);
        }
        if (options.stream().anyMatch(option -> !option.settings().isEmpty())) {
            kinds.add(Kind.SETTINGS);
        }
        return kinds.isEmpty() ? List.of(Kind.REASONS) : List.copyOf(kinds);
    }
}
