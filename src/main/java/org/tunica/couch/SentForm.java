package org.tunica.couch;

import java.util.ArrayList;
import java.util.List;
import org.springframework.util.MultiValueMap;
import org.tunica.store.Cases;

/**
 * A form of a case on its way between the page and the server.
 *
 * @param action where it is sent
 * @param seen the version it was made from; {@link Cases#NONE} for a new case
 * @param notes told when it was opened, and still to be seen
 */
record SentForm(String action, long seen, List<String> notes, Typed typed) {
    /** Where a new case is sent. */
    static final String NEW = "/cases/new";

    static SentForm of(String action, long seen, MultiValueMap<String, String> fields) {
        return new SentForm(action, seen, fields.getOrDefault("note", List.of()), new Typed(fields).counted());
    }

    static SentForm fresh(List<String> notes, Typed typed) {
        return new SentForm(NEW, Cases.NONE, notes, typed);
    }

    /** The same with one thing more to know. */
    SentForm noted(String note) {
        List<String> more = new ArrayList<>(notes);
        more.add(note);
        return new SentForm(action, seen, more, typed);
    }

    SentForm with(Typed other) {
        return new SentForm(action, seen, notes, other);
    }
}
