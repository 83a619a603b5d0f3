package org.tunica.review;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One thing a reviewer should know of some rules.
 *
 * @param rules their ids
 * @param places file and line of each
 * @param sentence in plain words, with the rules' ids
 * @param accepted why it may stand, when people have said so
 */
public record Remark(Kind kind, List<String> rules, List<String> places, String sentence, Optional<String> accepted)
        implements Comparable<Remark> {
    private static final Comparator<Remark> ORDER = Comparator.comparing(Remark::kind)
            .thenComparing(remark -> String.join(" ", remark.rules()))
            .thenComparing(Remark::sentence);

    public Remark {
        rules = List.copyOf(rules);
        places = List.copyOf(places);
    }

    /** A remark nobody has judged yet. */
    Remark(Kind kind, List<String> rules, List<String> places, String sentence) {
        this(kind, rules, places, sentence, Optional.empty());
    }

    /** The same remark, let stand. */
    Remark accepted(String why) {
        return new Remark(kind, rules, places, sentence, Optional.of(why));
    }

    /** Whether it still waits for someone to judge it; the ranges of rules are for reading and wait for nobody. */
    public boolean open() {
        return !fault() && accepted.isEmpty() && kind != Kind.OVERLAP && kind != Kind.RANGES;
    }

    /** Whether the rules must not be released so; anything else is for a person to judge. */
    public boolean fault() {
        return kind.fault;
    }

    @Override
    public int compareTo(Remark other) {
        return ORDER.compare(this, other);
    }

    @Override
    public String toString() {
        return String.join(", ", places) + ": " + kind.words() + ": " + sentence
                + accepted.map(why -> "; accepted because " + why).orElse("");
    }

    /** What can be remarked, the worst first. */
    public enum Kind {
        IMPOSSIBLE("can never speak", true),
        OUT_OF_RANGE("limit out of range", true),
        DUPLICATE("stands twice", true),
        NO_HAZARD("no hazard named", true),
        ACCEPTS_NOTHING("accepts nothing", true),
        NO_SCENARIO("not shown by a scenario", true),
        CONFLICT("conflict", false),
        IN_VAIN("speaks in vain", false),
        SUBSUMED("says nothing new", false),
        ALWAYS_TRUE("condition adds nothing", false),
        GAP("gap", false),
        OVERLAP("overlap", false),
        RANGES("ranges", false);

        private final String words;
        private final boolean fault;

        Kind(String words, boolean fault) {
            this.words = words;
            this.fault = fault;
        }

        /** The kind in words. */
        public String words() {
            return words;
        }
    }
}
