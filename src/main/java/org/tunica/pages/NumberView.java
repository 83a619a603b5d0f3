package org.tunica.pages;

import java.util.List;

/**
 * A number as a page shows it, with the help beside it.
 *
 * @param says what it is called
 * @param value with its unit; what is not known says so
 */
public record NumberView(String says, String value, List<NumberNote> notes) {
    public NumberView {
        notes = List.copyOf(notes);
    }
}
