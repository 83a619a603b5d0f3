package org.tunica.meeting;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** A day as it is typed into a form. */
final class Day {
    private Day() {}

    /** The day, or nothing when none was typed; what is no day is a fault. */
    static Optional<String> read(String field, String typed, List<String> faults) {
        String text = typed.strip();
        if (text.isEmpty()) {
            return Optional.empty();
        }
        if (!valid(text)) {
            faults.add(field + ": \"" + text + "\" is no day such as 2026-12-01.");
            return Optional.empty();
        }
        return Optional.of(text);
    }

    /** Whether a text is a day of the calendar, year first. */
    static boolean valid(String text) {
        try {
            return text.matches("[0-9]{4}-[0-9]{2}-[0-9]{2}") && LocalDate.parse(text) != null;
        } catch (DateTimeException e) {
            return false;
        }
    }
}
