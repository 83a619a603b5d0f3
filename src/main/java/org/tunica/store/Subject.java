package org.tunica.store;

import java.util.regex.Pattern;

/**
 * What an act was about, by its ids alone.
 *
 * @param kind for example {@code case}
 * @param id for example {@code larkspur-11/3}: a reference and a version
 */
public record Subject(String kind, String id) {
    private static final Pattern KIND = Pattern.compile("[a-z][a-z-]{0,39}");
    private static final Pattern ID = Pattern.compile("[A-Za-z0-9._:/@-]{1,400}");

    public Subject {
        if (!KIND.matcher(kind).matches() || !ID.matcher(id).matches()) {
            throw new IllegalArgumentException("a subject is a kind and an id without blanks, got " + kind + " " + id);
        }
    }
}
