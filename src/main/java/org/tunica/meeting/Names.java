package org.tunica.meeting;

import java.util.Arrays;
import java.util.List;

/** Names of people of the clinic as they are typed into a form: user names or initials, never a patient's. */
final class Names {
    private static final String NAME = "[A-Za-z0-9\u00c0-\u00de][A-Za-z0-9._@-]{0,39}";

    private Names() {}

    /** The names of a line, parted by commas or blanks; what is none is a fault. */
    static List<String> read(String field, String typed, List<String> faults) {
        List<String> names = Arrays.stream(typed.strip().split("[,;\\s]+"))
                .filter(name -> !name.isEmpty())
                .distinct()
                .toList();
        names.stream()
                .filter(name -> !name.matches(NAME))
                .forEach(name -> faults.add(field + ": \"" + name + "\" is no user name and no initials."));
        return names;
    }
}
