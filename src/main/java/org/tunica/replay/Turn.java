package org.tunica.replay;

import java.util.List;
import org.tunica.casefile.Word;

/**
 * A rule that says something else about options of a segment.
 *
 * @param rule id
 * @param title what is the case when it speaks; of the release that knows it, of the later where both do
 * @param act how it turned
 * @param techniques the options it turned for
 * @param limits numbers it names whose value is another
 */
public record Turn(String rule, String title, Act act, List<String> techniques, List<MovedLimit> limits) {
    public Turn {
        techniques = List.copyOf(techniques);
        limits = List.copyOf(limits);
    }

    /** How a rule turned. */
    public enum Act implements Word {
        /** It was silent. */
        SPEAKS_NOW("speaks now"),
        /** It spoke, for certain or in doubt. */
        IS_SILENT_NOW("is silent now"),
        /** It spoke for certain. */
        IS_IN_DOUBT_NOW("is in doubt now"),
        /** It was in doubt. */
        IS_CERTAIN_NOW("is certain now"),
        /** It speaks as before and means something else: another conclusion or another weight. */
        MEANS_OTHER_NOW("means something else now"),
        /** It sets as before, to another value. */
        SETS_OTHER_NOW("sets another value now");

        private final String says;

        Act(String says) {
            this.says = says;
        }

        /** In words, to be read after the id of a rule. */
        public String says() {
            return says;
        }
    }

    /** For example {@code EXC-007 is silent now for laser-1470-radial (heat.skin-gap.min: was 5 mm, is 4 mm)}. */
    public String sentence() {
        return rule + " " + act.says() + " for " + String.join(", ", techniques) + moved();
    }

    private String moved() {
        return limits.isEmpty()
                ? ""
                : " ("
                        + String.join(
                                "; ", limits.stream().map(MovedLimit::sentence).toList()) + ")";
    }
}
