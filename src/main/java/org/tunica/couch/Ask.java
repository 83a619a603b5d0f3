package org.tunica.couch;

import java.util.List;

/**
 * One thing the form asks for, as the contract of a case has it.
 *
 * @param field its name in the object it belongs to, with dots for objects inside, for example {@code measured.posture}
 * @param path JSON path in a case without indexes
 * @param says what is asked, in words
 * @param unit as people write it behind a number; empty where there is none
 * @param range what is taken for plausible, in words; empty for everything but numbers
 * @param choices the words it can be
 * @param required whether a case cannot do without
 * @param rare whether it is seldom filled in
 * @param row what stands in each row, of a list of objects
 */
record Ask(
        String field,
        String path,
        Kind kind,
        String says,
        String unit,
        String range,
        List<Choice> choices,
        boolean required,
        boolean rare,
        List<Ask> row) {
    /** How it is answered. */
    enum Kind {
        TEXT,
        NUMBER,
        /** One word of a list. */
        WORD,
        /** Yes or no. */
        FLAG,
        /** Several words; none is an answer, too. */
        SET,
        /** Words, the most important first. */
        ORDER,
        /** Objects of the same shape; none is an answer, too. */
        ROWS
    }

    /** A word as it stands in the file, and as people read it. */
    record Choice(String word, String says) {}

    /** The same, folded away or not. */
    Ask rare(boolean folded) {
        return new Ask(field, path, kind, says, unit, range, choices, required, folded, row);
    }

    Ask {
        choices = List.copyOf(choices);
        row = List.copyOf(row);
    }
}
