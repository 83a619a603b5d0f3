package org.tunica.outcomes;

import java.util.stream.Stream;

/** How figures of past cases are to be read. */
final class Cautions {
    static final String INVENTED =
            "INVENTED: made-up cases are counted here. They show how this reads and prove nothing about any technique.";

    static final String NOT_BY_LOT =
            "Nobody drew lots here: for each of these people somebody chose the technique, also for"
                    + " reasons that no record holds. Groups differ in more than their technique, so a difference between two of them"
                    + " does not show that one technique is better.";

    static final String FOLLOWED =
            "Veins that gave cause for worry are scanned more often and for longer, and people who are"
                    + " well stay away. What was seen of those who came need not hold for those who did not.";

    static final String ALIKE = "They are alike only in what was recorded; what nobody wrote down may differ.";

    static final String DEFINITIONS =
            "A vein counts as closed by the definition named. Groups counted by different definitions"
                    + " are never put together, and their shares must not be compared.";

    static final String CURVE =
            "A vein found open counts as open from the middle of the time since the scan before (S-0960,"
                    + " S-0961); one that was treated again, from that day. The curve holds only where leaving follow-up has nothing to"
                    + " do with the vein.";

    static final String LIMITS = "Limits are those of chance alone, as if every segment were of another person.";

    static final String WATCHED =
            "The chart sums up case by case how much better the results are explained by odds of failure"
                    + " multiplied than by the odds that published rates foretell (S-0962). It is adjusted for technique and vein only:"
                    + " no published model foretells closure from more. A signal asks for a look at the cases. It blames nobody: of"
                    + " twenty charts one speaks by chance alone, and what was foretold may be what is wrong: the trials had other patients and, here and there, another definition.";

    static final String ORDER =
            "Segments stand in the order of their years of treatment, within a year as in the base, which knows no days.";

    static final String SPLIT =
            "Sites and years are not adjusted for the people who came. Of twenty groups one lies outside the"
                    + " inner limits by chance alone (S-0964).";

    private Cautions() {}

    /** What is said beside all figures of past cases. */
    static Stream<String> always(int k) {
        return Stream.of(NOT_BY_LOT, FOLLOWED, DEFINITIONS, CURVE, LIMITS, hidden(k));
    }

    /** Why some numbers do not stand here. */
    private static String hidden(int k) {
        return "Groups of fewer than " + k
                + " past cases are not counted out, nor a group that would tell the size of such a"
                + " one; a curve ends where fewer than " + k
                + " are left. Who asks twice with different filters could still"
                + " work out what is hidden: such figures stay in the house.";
    }
}
