package org.tunica.workroom;

import java.time.YearMonth;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.Word;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;
import org.tunica.knowledge.Standing;
import org.tunica.rules.Condition;
import org.tunica.rules.Rule;

/**
 * A rule as somebody changed it in a form: comparisons, limits and words of its conditions, its sources, standing, review
 * and reason. What cannot be chosen there stays as it is.
 *
 * @param rule as it stands
 * @param knowledge it was read with
 */
public record RuleEdit(Rule rule, Knowledge knowledge) {
    /** What was typed, field by field; a condition's fields begin with its place, from 0. */
    public interface Typed {
        /** Every value of a field; none when it was not sent. */
        List<String> all(String field);

        /** The value of a field. */
        default String one(String field) {
            return all(field).stream().findFirst().orElse("").strip();
        }
    }

    /**
     * The rule as typed.
     *
     * @param change number of the change that brings it
     * @throws FaultyInput with every field that cannot be taken
     */
    public Rule as(Typed typed, String change) {
        Faults faults = new Faults();
        List<Condition> conditions = new ArrayList<>();
        for (int i = 0; i < rule.conditions().size(); i++) {
            conditions.add(condition(rule.conditions().get(i), i, typed, faults));
        }
        Optional<YearMonth> reviewBy = month(typed.one("reviewBy"), faults);
        List<String> sources = List.of(typed.one("sources").split("[,\\s]+"));
        sources.stream()
                .filter(id -> !knowledge.sources().containsKey(id))
                .forEach(id -> faults.add("sources", "there is no source \"" + id + "\""));
        Optional<Standing> standing = among(Standing.values(), typed.one("standing"));
        if (standing.isEmpty()) {
            faults.add("standing", "must be one of the standings");
        }
        String because = typed.one("because").replaceAll("\\s*\\R\\s*", " ");
        if (because.isBlank() || !because.matches("[ -~]+")) {
            faults.add("because", "must say why, in printable ASCII");
        }
        faults.throwIfAny("rule " + rule.id());
        return new Rule(
                rule.id(),
                rule.title(),
                sources,
                standing.orElseThrow(),
                change,
                reviewBy.orElseThrow(),
                rule.ruleClass(),
                rule.hazards(),
                conditions,
                rule.conclusion(),
                because,
                rule.place());
    }

    private static Optional<YearMonth> month(String typed, Faults faults) {
        try {
            return Optional.of(YearMonth.parse(typed));
        } catch (DateTimeParseException e) {
            faults.add("reviewBy", "must be a month such as 2027-11, is \"" + typed + "\"");
            return Optional.empty();
        }
    }

    private Condition condition(Condition is, int place, Typed typed, Faults faults) {
        String field = place + ".";
        if (is instanceof Condition.Compared compared) {
            Condition.Comparison comparison = Arrays.stream(Condition.Comparison.values())
                    .filter(one -> one.words().equals(typed.one(field + "comparison")))
                    .findFirst()
                    .orElse(compared.comparison());
            return new Condition.Compared(
                    compared.field(), comparison, limit(compared.limit(), typed.one(field + "limit"), field, faults));
        }
        if (is instanceof Condition.Between between) {
            Quantity low = limit(between.low(), typed.one(field + "low"), field, faults);
            Quantity high = limit(between.high(), typed.one(field + "high"), field, faults);
            if (low.value() > high.value()) {
                faults.add("condition " + (place + 1), "nothing lies between " + low.id() + " and " + high.id());
            }
            return new Condition.Between(between.field(), between.within(), low, high);
        }
        if (is instanceof Condition.AmongWords among) {
            return new Condition.AmongWords(
                    among.field(),
                    among.among(),
                    words(among.words(), among.field().values(), place, typed, faults));
        }
        if (is instanceof Condition.AnyOf any) {
            return new Condition.AnyOf(
                    any.field(), any.any(), words(any.words(), any.field().values(), place, typed, faults));
        }
        return is;
    }

    private Quantity limit(Quantity is, String id, String field, Faults faults) {
        Quantity wanted = knowledge.quantities().get(id);
        if (wanted == null || !wanted.unit().equals(is.unit())) {
            faults.add(
                    "condition " + (Integer.parseInt(field.substring(0, field.length() - 1)) + 1),
                    "\"" + id + "\" is no limit in " + is.unit());
            return is;
        }
        return wanted;
    }

    /** Those that stood there stay in their order; what is new comes behind. */
    private static List<String> words(List<String> stood, List<String> known, int place, Typed typed, Faults faults) {
        List<String> chosen = typed.all(place + ".words");
        List<String> words = Stream.concat(stood.stream(), known.stream())
                .filter(chosen::contains)
                .distinct()
                .toList();
        if (words.isEmpty()) {
            faults.add("condition " + (place + 1), "at least one word must be chosen");
        }
        return words;
    }

    private static <E extends Enum<E> & Word> Optional<E> among(E[] all, String word) {
        return Arrays.stream(all).filter(one -> one.word().equals(word)).findFirst();
    }

    /** Limits that could stand where one does: those in the same unit, by id. */
    public List<Quantity> limitsLike(Quantity limit) {
        return knowledge.quantities().values().stream()
                .filter(one -> one.unit().equals(limit.unit()))
                .toList();
    }

    /** The file the rule stands in. */
    public String path() {
        return rule.place().substring(0, rule.place().lastIndexOf(':'));
    }

    /**
     * The whole file with the rule written anew.
     *
     * @throws FaultyInput when remarks stand between its lines, which a form would lose
     */
    public String in(Map<String, String> texts, Rule changed) {
        String[] lines = texts.get(path()).split("\n", -1);
        int first = Integer.parseInt(rule.place().substring(rule.place().lastIndexOf(':') + 1)) - 1;
        int end = first + 1;
        while (end < lines.length && !lines[end].isBlank() && !lines[end].startsWith("rule ")) {
            if (lines[end].startsWith("#")) {
                Faults faults = new Faults();
                faults.add(path() + ":" + (end + 1), "a remark stands in the rule; edit the rule as text");
                faults.throwIfAny("rule " + rule.id());
            }
            end++;
        }
        List<String> written = new ArrayList<>(List.of(lines).subList(0, first));
        changed.text().lines().forEach(written::add);
        written.addAll(List.of(lines).subList(end, lines.length));
        return String.join("\n", written);
    }
}
