package org.tunica.rules;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tunica.casefile.Nearest;
import org.tunica.knowledge.Glossary;
import org.tunica.knowledge.GlossaryField;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;

/**
 * The closed sentences of conditions. A line fits one form whole or is refused; it only selects among forms written here
 * and never becomes code.
 */
final class Sentences {
    private static final String LIMIT = "limit ";
    private static final String NOT_RECORDED = " is not recorded";

    private final Knowledge knowledge;
    private final Map<String, GlossaryField> byNoun = new HashMap<>();
    private final Map<String, Condition> flags = new HashMap<>();

    /** Numbers, words and sets, those with the longer opening first, so that no opening hides another. */
    private final List<Opening> openings = new ArrayList<>();

    Sentences(Knowledge knowledge) {
        this.knowledge = knowledge;
        knowledge.glossary().fields().values().forEach(this::learn);
        openings.sort(
                Comparator.comparingInt((Opening opening) -> opening.words().length())
                        .reversed()
                        .thenComparing(Opening::words));
    }

    private void learn(GlossaryField field) {
        byNoun.put(field.noun(), field);
        switch (field.kind()) {
            case FLAG -> {
                flags.put(field.yes(), new Condition.Holds(field, true));
                flags.put(field.no(), new Condition.Holds(field, false));
            }
            case NUMBER -> openings.add(new Opening(field.name() + " ", field, true));
            case WORD, SET -> {
                openings.add(new Opening(field.name() + " " + field.verbNot() + " ", field, false));
                openings.add(new Opening(field.name() + " " + field.verb() + " ", field, true));
            }
        }
    }

    /**
     * The condition a sentence means.
     *
     * @throws SentenceFault when it fits no form, with the closest form and what was expected
     */
    Condition condition(String sentence) throws SentenceFault {
        Condition flag = flags.get(sentence);
        if (flag != null) {
            return flag;
        }
        for (boolean wanted : List.of(true, false)) {
            String opening = wanted ? Condition.Elsewhere.WANTED : Condition.Elsewhere.UNWANTED;
            if (sentence.startsWith(opening)) {
                return elsewhere(wanted, sentence.substring(opening.length()));
            }
        }
        if (sentence.startsWith("the finding ")) {
            return found(sentence);
        }
        if (sentence.startsWith("there is ")) {
            return earlier(sentence);
        }
        if (sentence.endsWith(NOT_RECORDED)) {
            return unrecorded(sentence);
        }
        for (Opening opening : openings) {
            if (sentence.startsWith(opening.words())) {
                return opened(opening, sentence.substring(opening.words().length()));
            }
        }
        throw closest(sentence);
    }

    private Condition elsewhere(boolean wanted, String inner) throws SentenceFault {
        if (condition(inner) instanceof Condition.OnOption on
                && on.field().id().startsWith("segment.")
                && !(on instanceof Condition.Elsewhere)
                && !(on instanceof Condition.Unrecorded)) {
            return new Condition.Elsewhere(wanted, on);
        }
        throw new SentenceFault("of another segment a rule may ask only what the scan or the history says of it, not \""
                + inner + "\"");
    }

    private static Condition earlier(String sentence) throws SentenceFault {
        for (Conclusion.Kind kind : Conclusion.Kind.ASKED_LATER) {
            for (boolean wanted : List.of(true, false)) {
                Condition.Earlier earlier = new Condition.Earlier(kind, wanted);
                if (earlier.sentence().equals(sentence)) {
                    return earlier;
                }
            }
        }
        throw new SentenceFault(
                "no form fits \"" + sentence + "\"; expected one of: " + String.join(", ", earlierForms()));
    }

    private static List<String> earlierForms() {
        return Conclusion.Kind.ASKED_LATER.stream()
                .flatMap(kind -> Stream.of(true, false).map(wanted -> new Condition.Earlier(kind, wanted).sentence()))
                .toList();
    }

    private Condition found(String sentence) throws SentenceFault {
        for (boolean wanted : List.of(false, true)) {
            String ending = wanted ? " holds" : " does not hold";
            if (sentence.endsWith(ending) && sentence.length() > "the finding ".length() + ending.length()) {
                String finding = sentence.substring("the finding ".length(), sentence.length() - ending.length());
                return new Condition.Found(finding(finding), wanted);
            }
        }
        throw new SentenceFault("expected \"the finding <finding> holds\" or \"... does not hold\"");
    }

    /** A declared finding, by its id. */
    String finding(String id) throws SentenceFault {
        Glossary glossary = knowledge.glossary();
        if (!glossary.findings().containsKey(id)) {
            throw new SentenceFault("there is no finding \"" + id + "\""
                    + Nearest.hint(id, glossary.findings().keySet()));
        }
        return id;
    }

    private Condition unrecorded(String sentence) throws SentenceFault {
        String noun = sentence.substring(0, sentence.length() - NOT_RECORDED.length());
        GlossaryField field = byNoun.get(noun);
        if (field == null) {
            throw new SentenceFault("nothing is called \"" + noun + "\"" + Nearest.hint(noun, byNoun.keySet()));
        }
        if (Condition.ALWAYS_KNOWN.contains(field.id())) {
            throw new SentenceFault(noun + " is always recorded");
        }
        return new Condition.Unrecorded(field);
    }

    private Condition opened(Opening opening, String rest) throws SentenceFault {
        return switch (opening.field().kind()) {
            case NUMBER -> number(opening.field(), rest);
            case WORD -> new Condition.AmongWords(opening.field(), opening.positive(), words(opening.field(), rest));
            case SET -> new Condition.AnyOf(opening.field(), opening.positive(), words(opening.field(), rest));
            case FLAG -> throw new IllegalStateException("a flag has no opening");
        };
    }

    private Condition number(GlossaryField field, String rest) throws SentenceFault {
        for (boolean within : List.of(true, false)) {
            String words = within ? "is between " : "is not between ";
            if (rest.startsWith(words)) {
                return between(field, within, rest.substring(words.length()));
            }
        }
        for (Condition.Comparison comparison : Condition.Comparison.values()) {
            String words = comparison.words() + " ";
            if (rest.startsWith(words)) {
                return new Condition.Compared(field, comparison, limit(rest.substring(words.length()), field.unit()));
            }
        }
        throw new SentenceFault("after \"" + field.name() + "\" expected one of: "
                + String.join(
                        ", ",
                        Arrays.stream(Condition.Comparison.values())
                                .map(Condition.Comparison::words)
                                .toList())
                + ", is between, is not between; then limit <id>");
    }

    private Condition between(GlossaryField field, boolean within, String rest) throws SentenceFault {
        String[] ends = rest.split(" and ", -1);
        if (ends.length != 2) {
            throw new SentenceFault("expected \"between limit <id> and limit <id>\"");
        }
        Quantity low = limit(ends[0], field.unit());
        Quantity high = limit(ends[1], field.unit());
        if (low.value() > high.value()) {
            throw new SentenceFault("limit " + low.id() + " is above limit " + high.id() + ": nothing lies between");
        }
        return new Condition.Between(field, within, low, high);
    }

    /** The quantity that {@code limit <id>} names, in the unit wanted. */
    Quantity limit(String words, Optional<String> unit) throws SentenceFault {
        if (!words.startsWith(LIMIT)) {
            throw new SentenceFault(
                    "expected \"limit <id>\", found \"" + words + "\"; numbers stand in knowledge/limits");
        }
        String id = words.substring(LIMIT.length());
        Quantity quantity = knowledge.quantities().get(id);
        if (quantity == null) {
            throw new SentenceFault("there is no limit \"" + id + "\""
                    + Nearest.hint(id, knowledge.quantities().keySet()));
        }
        if (unit.isPresent() && !unit.get().equals(quantity.unit())) {
            throw new SentenceFault(
                    "limit " + id + " is in " + quantity.unit() + " but is compared with a number in " + unit.get());
        }
        return quantity;
    }

    private static List<String> words(GlossaryField field, String rest) throws SentenceFault {
        List<String> words = List.of(rest.split(" or ", -1));
        for (String word : words) {
            if (!field.values().contains(word)) {
                throw new SentenceFault(
                        "\"" + word + "\" is not a word for " + field.noun() + Nearest.hint(word, field.values()));
            }
        }
        if (words.stream().distinct().count() < words.size()) {
            throw new SentenceFault("a word stands twice");
        }
        return words;
    }

    private SentenceFault closest(String sentence) {
        List<String> forms = forms();
        String hint = Nearest.to(sentence, forms)
                .or(() -> Nearest.to(opening(sentence), forms))
                .map(form -> "; the closest form is \"" + form + "\"")
                .orElse("; see the list of sentences in the glossary");
        return new SentenceFault("no form fits \"" + sentence + "\"" + hint);
    }

    /** The first words of a sentence: enough to tell which field was meant when the rest went wrong. */
    private static String opening(String sentence) {
        return sentence.replaceFirst(" (is|has|needs|works|stocks).*", " $1 ...");
    }

    /** Every form with a place-holder where a limit, word or finding goes. */
    List<String> forms() {
        List<String> forms = new ArrayList<>(flags.keySet());
        forms.add("the finding <finding> holds");
        forms.add("the finding <finding> does not hold");
        forms.addAll(earlierForms());
        forms.add(Condition.Elsewhere.WANTED + "<condition on a field of the segment>");
        forms.add(Condition.Elsewhere.UNWANTED + "<condition on a field of the segment>");
        for (Opening opening : openings) {
            if (opening.field().kind() == GlossaryField.Kind.NUMBER) {
                for (Condition.Comparison comparison : Condition.Comparison.values()) {
                    forms.add(opening.words() + comparison.words() + " limit <limit>");
                }
                forms.add(opening.words() + "is between limit <limit> and limit <limit>");
                forms.add(opening.words() + "is not between limit <limit> and limit <limit>");
            } else {
                forms.add(opening.words() + "<word>");
            }
        }
        byNoun.keySet().forEach(noun -> forms.add(noun + NOT_RECORDED));
        forms.sort(Comparator.naturalOrder());
        return forms;
    }

    private record Opening(String words, GlossaryField field, boolean positive) {}
}
