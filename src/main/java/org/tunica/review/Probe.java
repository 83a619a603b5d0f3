package org.tunica.review;

import java.util.List;
import org.tunica.rules.OptionFacts;

/**
 * Made-up facts at a boundary of one rule, with what the rule must say of them.
 *
 * @param rule its id
 * @param what which boundary, for example "the depth to the skin just below 5 mm"
 * @param facts what is recorded, as "noun: value"; all else is not recorded
 * @param option the same facts as the engine takes them
 * @param expected from the words of the rule, not from the engine
 */
public record Probe(String rule, String what, List<String> facts, OptionFacts option, Says expected) {
    public Probe {
        facts = List.copyOf(facts);
    }

    /** What a rule says of an option. */
    public enum Says {
        SPEAKS("speaks"),
        IS_IN_DOUBT("is in doubt"),
        STAYS_QUIET("stays quiet");

        private final String words;

        Says(String words) {
            this.words = words;
        }

        /** In the words of the scenarios. */
        public String words() {
            return words;
        }
    }

    /** A probe with what the engine said. */
    public record Outcome(Probe probe, Says said) {
        /** Whether the engine said what the rule means. */
        public boolean asExpected() {
            return said == probe.expected();
        }
    }

    /**
     * A boundary for which no facts exist.
     *
     * @param why in plain words
     */
    public record Unprobed(String rule, String what, String why) {}
}
