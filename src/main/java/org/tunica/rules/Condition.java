package org.tunica.rules;

import java.util.List;
import java.util.Set;
import org.tunica.knowledge.GlossaryField;
import org.tunica.knowledge.Quantity;

/** One condition of a rule. Immutable; its sentence is the canonical one whatever the blanks of the file. */
public sealed interface Condition {
    /** The condition as a sentence without "when" or "and". */
    String sentence();

    /** A condition on what is known of the option itself. */
    sealed interface OnOption extends Condition {
        /** The field it asks about. */
        GlossaryField field();

        /** Whether it holds for an option. */
        Truth truth(OptionFacts facts);

        /** Limits it compares with. */
        default List<Quantity> limits() {
            return List.of();
        }
    }

    /** A number compared with a limit. */
    record Compared(GlossaryField field, Comparison comparison, Quantity limit) implements OnOption {
        @Override
        public Truth truth(OptionFacts facts) {
            return facts.answer(field.id()) instanceof Answer.Number number
                    ? Truth.of(comparison.holds(number.value(), limit.value()))
                    : Truth.UNKNOWN;
        }

        @Override
        public List<Quantity> limits() {
            return List.of(limit);
        }

        @Override
        public String sentence() {
            return field.name() + " " + comparison.words() + " limit " + limit.id();
        }
    }

    /** A number between two limits, both included. */
    record Between(GlossaryField field, Quantity low, Quantity high) implements OnOption {
        @Override
        public Truth truth(OptionFacts facts) {
            return facts.answer(field.id()) instanceof Answer.Number number
                    ? Truth.of(number.value() >= low.value() && number.value() <= high.value())
                    : Truth.UNKNOWN;
        }

        @Override
        public List<Quantity> limits() {
            return List.of(low, high);
        }

        @Override
        public String sentence() {
            return field.name() + " is between limit " + low.id() + " and limit " + high.id();
        }
    }

    /** A word that is, or is not, among some. */
    record AmongWords(GlossaryField field, boolean among, List<String> words) implements OnOption {
        @Override
        public Truth truth(OptionFacts facts) {
            return facts.answer(field.id()) instanceof Answer.OneWord word
                    ? Truth.of(words.contains(word.word()) == among)
                    : Truth.UNKNOWN;
        }

        @Override
        public String sentence() {
            return field.name() + " " + (among ? field.verb() : field.verbNot()) + " " + String.join(" or ", words);
        }
    }

    /** A set that holds any, or none, of some words. */
    record AnyOf(GlossaryField field, boolean any, List<String> words) implements OnOption {
        @Override
        public Truth truth(OptionFacts facts) {
            return facts.answer(field.id()) instanceof Answer.Words held
                    ? Truth.of(words.stream().anyMatch(held.words()::contains) == any)
                    : Truth.UNKNOWN;
        }

        @Override
        public String sentence() {
            return field.name() + " " + (any ? field.verb() : field.verbNot()) + " " + String.join(" or ", words);
        }
    }

    /** Yes or no as wanted. */
    record Holds(GlossaryField field, boolean wanted) implements OnOption {
        @Override
        public Truth truth(OptionFacts facts) {
            return facts.answer(field.id()) instanceof Answer.Flag flag
                    ? Truth.of(flag.holds() == wanted)
                    : Truth.UNKNOWN;
        }

        @Override
        public String sentence() {
            return wanted ? field.yes() : field.no();
        }
    }

    /** Nothing is recorded; the one condition that is never in doubt. */
    record Unrecorded(GlossaryField field) implements OnOption {
        @Override
        public Truth truth(OptionFacts facts) {
            return Truth.of(facts.answer(field.id()) instanceof Answer.Unknown);
        }

        @Override
        public String sentence() {
            return field.noun() + " is not recorded";
        }
    }

    /** A finding of stage 1 holds, or does not. */
    record Found(String finding, boolean wanted) implements Condition {
        @Override
        public String sentence() {
            return "the finding " + finding + (wanted ? " holds" : " does not hold");
        }
    }

    /** How a number is compared. */
    enum Comparison {
        LESS("is less than"),
        AT_MOST("is at most"),
        MORE("is more than"),
        AT_LEAST("is at least");

        private final String words;

        Comparison(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }

        boolean holds(double value, double limit) {
            return switch (this) {
                case LESS -> value < limit;
                case AT_MOST -> value <= limit;
                case MORE -> value > limit;
                case AT_LEAST -> value >= limit;
            };
        }
    }

    /** The fields that are given by the program, never by a case, and so are never unknown. */
    Set<String> ALWAYS_KNOWN =
            Set.of("option.family", "option.technique", "option.needs", "segment.vein", "segment.level");
}
