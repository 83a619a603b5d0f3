package org.tunica.similar;

import java.util.List;

/** Past cases kept under older rules that those in force cannot read; the others are found without them. */
public final class LeftOut {
    private static final int MOST_NAMED = 10;

    private LeftOut() {}

    /** What some cases are, in words for people, and by name which are left out, so that somebody can look at them. */
    public static String told(String says, List<String> ids) {
        if (ids.isEmpty()) {
            return says;
        }
        String named = String.join(", ", ids.subList(0, Math.min(MOST_NAMED, ids.size())));
        int more = ids.size() - MOST_NAMED;
        return says + " LEFT OUT, for the rules in force cannot read it: " + named
                + (more > 0 ? " and " + more + " more." : ".");
    }
}
