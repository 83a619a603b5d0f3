package org.tunica.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.tunica.knowledge.GlossaryField;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Measurement;
import org.tunica.knowledge.Quantity;
import org.tunica.knowledge.Technique;
import org.tunica.rules.Answer;
import org.tunica.rules.Condition;
import org.tunica.rules.Rule;

/**
 * Everything an option can be, as far as the rules can tell the difference: a finite set of variables with finitely many
 * cells each. Family and needs follow from the technique, so the three are one variable; a number is cut at every limit
 * it is compared with and ends where a measurement is no longer believed; what may be missing has a cell for that.
 */
final class FactSpace {
    static final String TECHNIQUE = "option.technique";
    private static final Set<String> OF_TECHNIQUE = Set.of("option.family", TECHNIQUE, "option.needs");

    /** Numbers of a case whose path in knowledge/measurements.yaml does not follow from the id of their field. */
    private static final Map<String, String> PATHS = Map.of("segment.nerveGapMm", "limbs.segments.nerve.gapMm");

    private final Knowledge knowledge;
    private final Map<String, Set<Double>> cuts = new LinkedHashMap<>();
    private final Map<String, Variable> variables = new LinkedHashMap<>();

    FactSpace(Knowledge knowledge, List<Rule> rules) {
        this.knowledge = knowledge;
        rules.stream()
                .flatMap(rule -> rule.onOption().stream())
                .forEach(condition -> condition.limits().stream()
                        .map(Quantity::value)
                        .forEach(value -> cuts.computeIfAbsent(condition.field().id(), id -> new TreeSet<>())
                                .add(value)));
        variables.put(TECHNIQUE, technique());
        knowledge.glossary().fields().values().stream()
                .filter(field -> !OF_TECHNIQUE.contains(field.id()))
                .forEach(this::add);
    }

    /** The fields of the glossary, in its order. */
    List<GlossaryField> fields() {
        return List.copyOf(knowledge.glossary().fields().values());
    }

    /** The variable a field belongs to; of a set, the one that tells whether the set is recorded. */
    Variable variable(String fieldId) {
        return named(OF_TECHNIQUE.contains(fieldId) ? TECHNIQUE : fieldId);
    }

    /** The variable that tells whether a set holds a word. */
    Variable member(String fieldId, String word) {
        return named(fieldId + " " + word);
    }

    /** Whether a field is a set that stands for itself, not one given by the technique. */
    boolean freeSet(GlossaryField field) {
        return field.kind() == GlossaryField.Kind.SET && !OF_TECHNIQUE.contains(field.id());
    }

    /** Whether the technique alone answers a field. */
    boolean ofTechnique(String fieldId) {
        return OF_TECHNIQUE.contains(fieldId);
    }

    /** What may be entered for the field of a measured number. */
    Optional<Measurement> measured(String fieldId) {
        String path = PATHS.getOrDefault(
                fieldId, fieldId.replaceFirst("^segment\\.", "limbs.segments.").replaceFirst("^limb\\.", "limbs."));
        return Optional.ofNullable(knowledge.measurements().get(path));
    }

    private Variable named(String id) {
        Variable variable = variables.get(id);
        if (variable == null) {
            throw new IllegalArgumentException("no variable " + id);
        }
        return variable;
    }

    private Variable technique() {
        return new Variable(
                TECHNIQUE,
                knowledge.techniques().values().stream().map(this::cell).toList());
    }

    private Variable.Cell cell(Technique technique) {
        Map<String, GlossaryField> fields = knowledge.glossary().fields();
        Set<String> needs =
                technique.needs().stream().map(id -> fields.get(id).noun()).collect(Collectors.toSet());
        return new Variable.Cell(
                Map.of(
                        TECHNIQUE,
                        new Answer.OneWord(technique.id()),
                        "option.family",
                        new Answer.OneWord(technique.family().word()),
                        "option.needs",
                        new Answer.Words(needs)),
                Optional.empty());
    }

    private void add(GlossaryField field) {
        String id = field.id();
        List<Variable.Cell> cells = new ArrayList<>();
        switch (field.kind()) {
            case NUMBER -> spans(id).forEach(span -> cells.add(Variable.Cell.of(id, span)));
            case WORD -> field.values().forEach(word -> cells.add(Variable.Cell.of(id, new Answer.OneWord(word))));
            case FLAG -> yesAndNo(id, cells);
            case SET -> {
                cells.add(Variable.Cell.of(id, new Answer.Words(Set.of())));
                field.values().forEach(word -> addMember(id + " " + word));
            }
        }
        if (!Condition.ALWAYS_KNOWN.contains(id)) {
            cells.add(Variable.Cell.of(id, Answer.UNKNOWN));
        }
        variables.put(id, new Variable(id, cells));
    }

    private void addMember(String id) {
        List<Variable.Cell> cells = new ArrayList<>();
        yesAndNo(id, cells);
        variables.put(id, new Variable(id, cells));
    }

    private static void yesAndNo(String id, List<Variable.Cell> cells) {
        cells.add(Variable.Cell.of(id, new Answer.Flag(false)));
        cells.add(Variable.Cell.of(id, new Answer.Flag(true)));
    }

    private List<Span> spans(String id) {
        TreeSet<Double> ends = new TreeSet<>(cuts.getOrDefault(id, Set.of()));
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        if (measured(id).isPresent()) {
            low = measured(id).get().range().min();
            high = measured(id).get().range().max();
            ends = new TreeSet<>(ends.subSet(low, true, high, true));
            ends.add(low);
            ends.add(high);
        }
        List<Span> spans = new ArrayList<>();
        double from = low;
        for (double end : ends) {
            if (end > from) {
                spans.add(Span.open(from, end));
            }
            spans.add(Span.point(end));
            from = end;
        }
        if (Double.isInfinite(high)) {
            spans.add(Span.open(from, high));
        }
        return spans;
    }
}
