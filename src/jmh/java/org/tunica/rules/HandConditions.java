package org.tunica.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.tunica.knowledge.GlossaryField;

/**
 * Conditions as Java expressions over fields of plain types: numbers are doubles with NaN for unknown, words are indexes
 * with -1 for unknown, flags 1, 0 or -1, sets bits of the words some rule names, and a flag whether they are known.
 */
final class HandConditions {
    private final Map<String, GlossaryField> fields = new LinkedHashMap<>();
    private final Map<String, List<String>> bits = new LinkedHashMap<>();
    private final List<String> verdicts = new ArrayList<>();
    private final Map<String, String> loops = new LinkedHashMap<>();
    private final Map<String, GlossaryField> elsewhere = new LinkedHashMap<>();

    /** Whether a condition holds for certain, or may hold. */
    String java(Condition condition, boolean certain) {
        if (condition instanceof Condition.OnVerdicts earlier) {
            String name = verdict(earlier.fact());
            String sure = "s.sure" + name;
            String some = "(" + sure + " || s.doubt" + name + ")";
            return earlier.wanted() ? (certain ? sure : some) : "!" + (certain ? some : sure);
        }
        if (condition instanceof Condition.Elsewhere other) {
            elsewhere.put(other.field().id(), other.field());
            String body = java(other.condition(), certain == other.wanted());
            String name = loops.computeIfAbsent(body, key -> "elsewhere" + loops.size());
            return (other.wanted() ? "" : "!") + name + "(o)";
        }
        return own((Condition.OnOption) condition, certain);
    }

    private String own(Condition.OnOption condition, boolean certain) {
        String field = field(condition.field());
        if (condition instanceof Condition.Compared compared) {
            double limit = compared.limit().value();
            return certain
                    ? field + sign(compared.comparison()) + limit
                    : "!(" + field + opposite(compared.comparison()) + limit + ")";
        }
        if (condition instanceof Condition.Between between) {
            String inside = field + " >= " + between.low().value() + " && " + field + " <= "
                    + between.high().value();
            String outside = field + " < " + between.low().value() + " || " + field + " > "
                    + between.high().value();
            return between.within() == certain ? choose(certain, inside) : choose(certain, outside);
        }
        if (condition instanceof Condition.AmongWords words) {
            return among(words, field, certain);
        }
        if (condition instanceof Condition.AnyOf any) {
            return any(any, field, certain);
        }
        if (condition instanceof Condition.Holds holds) {
            return certain ? field + " == " + (holds.wanted() ? 1 : 0) : field + " != " + (holds.wanted() ? 0 : 1);
        }
        if (condition instanceof Condition.Unrecorded unrecorded) {
            return unknown(unrecorded.field());
        }
        throw new IllegalStateException("nobody wrote this condition by hand: " + condition.sentence());
    }

    /** Certain: the expression itself. May hold: the expression is what denies it, false for NaN. */
    private static String choose(boolean certain, String expression) {
        return (certain ? "(" : "!(") + expression + ")";
    }

    private static String among(Condition.AmongWords condition, String field, boolean certain) {
        List<String> values = condition.field().values();
        String join = condition.among() ? " || " : " && ";
        String sign = condition.among() ? " == " : " != ";
        String known = condition.words().stream()
                .map(word -> field + sign + values.indexOf(word))
                .collect(Collectors.joining(join, "(", ")"));
        if (condition.among() == certain
                || Condition.ALWAYS_KNOWN.contains(condition.field().id())) {
            return known;
        }
        return certain ? "(" + field + " != -1 && " + known + ")" : "(" + field + " == -1 || " + known + ")";
    }

    private String any(Condition.AnyOf condition, String field, boolean certain) {
        List<String> named = bits.computeIfAbsent(condition.field().id(), id -> new ArrayList<>());
        long mask = 0;
        for (String word : condition.words()) {
            if (!named.contains(word)) {
                named.add(word);
            }
            mask |= 1L << named.indexOf(word);
        }
        String test = "(" + field + " & " + mask + "L)" + (condition.any() ? " != 0" : " == 0");
        if (condition.any() == certain) {
            return test;
        }
        return "(" + (certain ? "" : "!") + field + "Known " + (certain ? "&& " : "|| ") + test + ")";
    }

    private String unknown(GlossaryField asked) {
        String field = field(asked);
        return switch (asked.kind()) {
            case NUMBER -> "Double.isNaN(" + field + ")";
            case WORD, FLAG -> field + " == -1";
            case SET -> "!" + field + "Known";
        };
    }

    private static String sign(Condition.Comparison comparison) {
        return switch (comparison) {
            case LESS -> " < ";
            case AT_MOST -> " <= ";
            case MORE -> " > ";
            case AT_LEAST -> " >= ";
        };
    }

    private static String opposite(Condition.Comparison comparison) {
        return switch (comparison) {
            case LESS -> " >= ";
            case AT_MOST -> " > ";
            case MORE -> " <= ";
            case AT_LEAST -> " < ";
        };
    }

    private String field(GlossaryField field) {
        fields.put(field.id(), field);
        return "o." + name(field);
    }

    static String name(GlossaryField field) {
        return field.id().replace('.', '_');
    }

    /** The number of an earlier verdict that rules ask for. */
    String verdict(String fact) {
        if (!verdicts.contains(fact)) {
            verdicts.add(fact);
        }
        return Integer.toString(verdicts.indexOf(fact));
    }

    boolean asksFor(String fact) {
        return verdicts.contains(fact);
    }

    int verdictsCount() {
        return verdicts.size();
    }

    /** Every field some condition asks. */
    List<GlossaryField> fields() {
        return List.copyOf(fields.values());
    }

    /** Every field some condition asks of another segment. */
    List<GlossaryField> fieldsElsewhere() {
        return List.copyOf(elsewhere.values());
    }

    /** Words of a set, in the order of their bits. */
    List<String> bits(GlossaryField field) {
        return bits.getOrDefault(field.id(), List.of());
    }

    /** Names of the methods that look at other segments, by the expression they try there. */
    Map<String, String> loops() {
        return loops;
    }
}
