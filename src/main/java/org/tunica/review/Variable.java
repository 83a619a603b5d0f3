package org.tunica.review;

import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.tunica.knowledge.GlossaryField;
import org.tunica.rules.Answer;
import org.tunica.rules.AnswerBook;

/** One thing rules ask about, cut into cells so fine that no condition of the rules changes within one. */
record Variable(String id, List<Cell> cells) {
    Variable {
        cells = List.copyOf(cells);
    }

    /** The cells whose answers pass a test. */
    BitSet where(Predicate<Cell> test) {
        BitSet passing = new BitSet();
        for (int i = 0; i < cells.size(); i++) {
            if (test.test(cells.get(i))) {
                passing.set(i);
            }
        }
        return passing;
    }

    /** The one cell, by its answer to the field of the variable's own name. */
    BitSet answering(Answer answer) {
        return where(cell -> cell.said(id).equals(answer));
    }

    /** A cell, seen as a book that answers for one sample of it. */
    record Cell(Map<String, Answer> answers, Optional<Span> span) implements AnswerBook {
        static Cell of(String fieldId, Answer answer) {
            return new Cell(Map.of(fieldId, answer), Optional.empty());
        }

        static Cell of(String fieldId, Span span) {
            return new Cell(Map.of(fieldId, new Answer.Number(span.sample())), Optional.of(span));
        }

        /** Whether nothing is recorded here. */
        boolean unknown() {
            return answers.containsValue(Answer.UNKNOWN);
        }

        /** What it answers to a field, or to a variable that is none. */
        Answer said(String id) {
            Answer answer = answers.get(id);
            if (answer == null) {
                throw new IllegalArgumentException("no field " + id);
            }
            return answer;
        }

        @Override
        public Answer answer(GlossaryField field) {
            return said(field.id());
        }

        @Override
        public List<AnswerBook> elsewhere() {
            return List.of();
        }
    }
}
