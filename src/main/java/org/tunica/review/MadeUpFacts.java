package org.tunica.review;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tunica.knowledge.GlossaryField;
import org.tunica.rules.Answer;
import org.tunica.rules.AnswerBook;
import org.tunica.rules.OptionFacts;
import org.tunica.rules.OptionKey;

/** Facts that lie where a search found room: what does not matter is not recorded. */
final class MadeUpFacts {
    private final FactSpace space;
    private final Search.Found found;

    /** A cell whose number is put right next to its end, if any. */
    private final @Nullable Sharp sharp;

    MadeUpFacts(FactSpace space, Search.Found found, @Nullable Sharp sharp) {
        this.space = space;
        this.found = found;
        this.sharp = sharp;
    }

    OptionFacts option(String ref) {
        Variable.Cell cell = chosen(space.variable(FactSpace.TECHNIQUE), found.own());
        String technique = ((Answer.OneWord) cell.said(FactSpace.TECHNIQUE)).word();
        return OptionFacts.of(
                new OptionKey(ref, technique),
                answers(found.own()),
                found.others().stream()
                        .map(cells -> new Elsewhere(answers(cells)))
                        .toList());
    }

    /** What is recorded, as "noun: value", in the order of the glossary. */
    List<String> words() {
        List<String> words = new ArrayList<>(words(found.own(), ""));
        found.others().forEach(cells -> words.addAll(words(cells, "another segment, ")));
        return words;
    }

    private List<String> words(Map<String, BitSet> cells, String whose) {
        List<String> words = new ArrayList<>();
        for (GlossaryField field : space.fields()) {
            Variable variable = space.variable(field.id());
            boolean shown = cells.containsKey(variable.id())
                    && (!space.ofTechnique(field.id()) || field.id().equals(FactSpace.TECHNIQUE));
            if (shown) {
                boolean edge = sharp != null && sharp.at(variable, cells);
                String value = edge ? sharp.edge().words() : says(field, answer(field, cells));
                words.add(whose + field.noun() + ": " + value);
            }
        }
        return words;
    }

    private static String says(GlossaryField field, Answer answer) {
        return answer instanceof Answer.Number number
                ? Figures.with(number.value(), field.unit().orElse("1"))
                : answer.says();
    }

    private Map<GlossaryField, Answer> answers(Map<String, BitSet> cells) {
        Map<GlossaryField, Answer> answers = new HashMap<>();
        space.fields().forEach(field -> answers.put(field, answer(field, cells)));
        return answers;
    }

    private Answer answer(GlossaryField field, Map<String, BitSet> cells) {
        Variable variable = space.variable(field.id());
        if (sharp != null && sharp.at(variable, cells)) {
            return new Answer.Number(sharp.edge().value());
        }
        Answer answer = chosen(variable, cells).said(field.id());
        return space.freeSet(field) && answer instanceof Answer.Words ? held(field, cells) : answer;
    }

    private Answer held(GlossaryField field, Map<String, BitSet> cells) {
        TreeSet<String> held = new TreeSet<>();
        for (String word : field.values()) {
            Variable member = space.member(field.id(), word);
            if (chosen(member, cells).said(member.id()).equals(new Answer.Flag(true))) {
                held.add(word);
            }
        }
        return new Answer.Words(held);
    }

    /** A known cell if one is left of a variable that matters; an unknown one where it does not. */
    private static Variable.Cell chosen(Variable variable, Map<String, BitSet> cells) {
        BitSet left = cells.get(variable.id());
        if (left == null) {
            return variable.cells().stream()
                    .filter(Variable.Cell::unknown)
                    .findFirst()
                    .orElse(variable.cells().get(0));
        }
        return left.stream()
                .mapToObj(variable.cells()::get)
                .filter(cell -> !cell.unknown())
                .findFirst()
                .orElse(variable.cells().get(left.nextSetBit(0)));
    }

    /** A number next to a limit, and the cell it stands in for. */
    record Sharp(Variable variable, int cell, Edge edge) {
        private boolean at(Variable asked, Map<String, BitSet> cells) {
            BitSet left = cells.get(asked.id());
            return asked.id().equals(variable.id()) && left != null && left.cardinality() == 1 && left.get(cell);
        }
    }

    private record Elsewhere(Map<GlossaryField, Answer> answers) implements AnswerBook {
        @Override
        public Answer answer(GlossaryField field) {
            return answers.get(field);
        }

        @Override
        public List<AnswerBook> elsewhere() {
            return List.of();
        }
    }
}
