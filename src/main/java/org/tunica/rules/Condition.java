package org.tunica.rules;

import java.util.Collections;
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

        /** What it asks about, in the words of "... is not recorded". */
        default String noun() {
            return field().noun();
        }

        /** Whether it holds for an option. */
        Truth truth(AnswerBook facts);

        /** Limits it compares with. */
        default List<Quantity> limits() {
            return List.of();
        }
    }

    /** A number compared with a limit. */
    record Compared(GlossaryField field, Comparison comparison, Quantity limit) implements OnOption {
        @Override
        public Truth truth(AnswerBook facts) {
            return facts.answer(field) instanceof Answer.Number number
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

    /** A number between two limits, both included, or one that is not. */
    record Between(GlossaryField field, boolean within, Quantity low, Quantity high) implements OnOption {
        @Override
        public Truth truth(AnswerBook facts) {
            return facts.answer(field) instanceof Answer.Number number
                    ? Truth.of((number.value() >= low.value() && number.value() <= high.value()) == within)
                    : Truth.UNKNOWN;
        }

        @Override
        public List<Quantity> limits() {
            return List.of(low, high);
        }

        @Override
        public String sentence() {
            return field.name() + (within ? " is between limit " : " is not between limit ") + low.id() + " and limit "
                    + high.id();
        }
    }

    /** A word that is, or is not, among some. */
    record AmongWords(GlossaryField field, boolean among, List<String> words) implements OnOption {
        @Override
        public Truth truth(AnswerBook facts) {
            return facts.answer(field) instanceof Answer.OneWord word
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
        public Truth truth(AnswerBook facts) {
            return facts.answer(field) instanceof Answer.Words held
                    ? Truth.of(Collections.disjoint(words, held.words()) != any)
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
        public Truth truth(AnswerBook facts) {
            return facts.answer(field) instanceof Answer.Flag flag ? Truth.of(flag.holds() == wanted) : Truth.UNKNOWN;
        }

        @Override
        public String sentence() {
            return wanted ? field.yes() : field.no();
        }
    }

    /** Nothing is recorded; the one condition that is never in doubt. */
    record Unrecorded(GlossaryField field) implements OnOption {
        @Override
        public Truth truth(AnswerBook facts) {
            return Truth.of(facts.answer(field) instanceof Answer.Unknown);
        }

        @Override
        public String sentence() {
            return field.noun() + " is not recorded";
        }
    }

    /** A condition on another segment of the same leg: some other segment fulfils it, or none does. */
    record Elsewhere(boolean wanted, OnOption condition) implements OnOption {
        static final String WANTED = "in another segment of this leg ";
        static final String UNWANTED = "in no other segment of this leg ";

        @Override
        public GlossaryField field() {
            return condition.field();
        }

        @Override
        public String noun() {
            return condition.noun() + " of another segment";
        }

        @Override
        public Truth truth(AnswerBook facts) {
            Truth some = facts.elsewhere().stream().map(condition::truth).reduce(Truth.FALSE, Truth::or);
            return wanted ? some : some.not();
        }

        @Override
        public List<Quantity> limits() {
            return condition.limits();
        }

        @Override
        public String sentence() {
            return (wanted ? WANTED : UNWANTED) + condition.sentence();
        }
    }

    /** A condition on what rules of earlier stages said of the option. */
    sealed interface OnVerdicts extends Condition {
        /** The name under which the engine keeps such verdicts. */
        String fact();

        /** Whether there must be one, or must be none. */
        boolean wanted();
    }

    /** A finding of stage 1 holds, or does not. */
    record Found(String finding, boolean wanted) implements OnVerdicts {
        @Override
        public String fact() {
            return finding;
        }

        @Override
        public String sentence() {
            return "the finding " + finding + (wanted ? " holds" : " does not hold");
        }
    }

    /** Some rule of an earlier stage came to a kind of conclusion, or none did. */
    record Earlier(Conclusion.Kind kind, boolean wanted) implements OnVerdicts {
        @Override
        public String fact() {
            return factOf(kind);
        }

        /** Distinct from every finding, whose names hold no blank. */
        static String factOf(Conclusion.Kind kind) {
            return "verdict " + kind.sentence();
        }

        @Override
        public String sentence() {
            return wanted ? "there is " + kind.one() : "there is " + kind.none();
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

        /** The words a rule uses. */
        public String words() {
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
    Set<String> ALWAYS_KNOWN = Set.of(
            "option.family",
            "option.technique",
            "option.needs",
            "segment.vein",
            "segment.level",
            "segment.chosenFamily");
}
