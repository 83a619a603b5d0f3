package org.tunica.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.tunica.knowledge.GlossaryField;

/** Answers that stand for all a field can have. */
final class PossibleAnswers {
    private PossibleAnswers() {}

    static List<Answer> of(GlossaryField field, List<Double> limits) {
        return switch (field.kind()) {
            case NUMBER -> numbers(limits);
            case WORD ->
                field.values().stream().<Answer>map(Answer.OneWord::new).toList();
            case FLAG -> List.of(new Answer.Flag(true), new Answer.Flag(false));
            case SET -> sets(field.values());
        };
    }

    /** One number in each band: half the lowest limit, between neighbours, and half as much again as the highest. */
    private static List<Answer> numbers(List<Double> limits) {
        List<Answer> answers = new ArrayList<>();
        if (limits.isEmpty()) {
            return answers;
        }
        answers.add(new Answer.Number(limits.get(0) / 2));
        for (int i = 1; i < limits.size(); i++) {
            answers.add(new Answer.Number((limits.get(i - 1) + limits.get(i)) / 2));
        }
        answers.add(new Answer.Number(limits.get(limits.size() - 1) * 3 / 2));
        return answers;
    }

    private static List<Answer> sets(List<String> words) {
        List<Answer> answers = new ArrayList<>();
        answers.add(new Answer.Words(Set.of()));
        words.forEach(word -> answers.add(new Answer.Words(Set.of(word))));
        return answers;
    }
}
