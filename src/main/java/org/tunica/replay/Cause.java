package org.tunica.replay;

import java.util.List;
import java.util.Optional;

/**
 * Segments that come out otherwise because of one thing. A segment with several causes is counted under each.
 *
 * @param rule id of the rule that turned; absent when no rule did and numbers alone moved
 * @param says what is the case when it speaks, or what moved
 * @param act how it turned
 * @param limits numbers it names whose value is another
 * @param gravity the worst that came of it
 * @param segmentsCount segments
 * @param casesCount cases
 * @param kinds how many of the segments show which kind of change; one can show several
 * @param examples some of the gravest segments, as "case, segment"
 */
public record Cause(
        Optional<String> rule,
        String says,
        Optional<Turn.Act> act,
        List<MovedLimit> limits,
        Gravity gravity,
        int segmentsCount,
        int casesCount,
        List<KindCount> kinds,
        List<String> examples) {
    public Cause {
        limits = List.copyOf(limits);
        kinds = List.copyOf(kinds);
        examples = List.copyOf(examples);
    }

    /** The rule and how it turned, or that none did. */
    public String heading() {
        return rule.isPresent() && act.isPresent()
                ? rule.get() + " " + act.get().says()
                : "no rule turned";
    }
}
