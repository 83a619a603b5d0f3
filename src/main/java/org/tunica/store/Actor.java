package org.tunica.store;

import java.util.regex.Pattern;

/**
 * Who acts: a user, a record system, the command line. Never a patient.
 *
 * @param id a user name, or a word before a colon and a name: {@code hook:ward-7}
 */
public record Actor(String id) {
    private static final Pattern SHAPE = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._:/@-]{0,199}");

    public Actor {
        if (!SHAPE.matcher(id).matches()) {
            throw new IllegalArgumentException("an actor is written without blanks, got \"" + id + "\"");
        }
    }
}
