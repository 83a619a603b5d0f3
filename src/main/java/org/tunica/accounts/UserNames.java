package org.tunica.accounts;

import java.util.Locale;
import java.util.Set;
import org.tunica.casefile.Faults;

/** How users are called. */
public final class UserNames {
    private static final String SHAPE = "[a-z0-9][a-z0-9._@-]{0,63}";

    /** Names under which this program itself acts in the audit trail. */
    private static final Set<String> TAKEN = Set.of("command-line", "server");

    private UserNames() {}

    /** The name somebody typed, as it is kept. */
    public static String typed(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }

    static void check(String name, Faults faults) {
        if (!name.matches(SHAPE)) {
            faults.add(
                    "name",
                    "must start with a lower-case letter or a digit and go on with those, dots, hyphens, underscores or"
                            + " @; at most 64 characters");
        } else if (TAKEN.contains(name)) {
            faults.add("name", "is one under which the program itself acts; choose another");
        }
    }
}
