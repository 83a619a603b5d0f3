package org.tunica.review;

import java.util.List;
import org.tunica.casefile.Word;

/**
 * One thing that is not the same in two releases.
 *
 * @param id for example {@code EXC-007} or {@code heat.skin-gap.min}
 * @param title what it is, in words (of the newer release where it is there)
 * @param details what changed of it; empty when it was added or removed
 */
public record Difference(Part part, Act act, String id, String title, List<Detail> details) {
    public Difference {
        details = List.copyOf(details);
    }

    /** Where it stands, in the order in which differences are told. */
    public enum Part implements Word {
        RULE,
        NUMBER,
        TECHNIQUE,
        MEASUREMENT,
        FIELD,
        FINDING,
        SETTING,
        CONDITION,
        ALLERGY,
        HAZARD,
        INTENDED_USE,
        CONFLICT,
        EVIDENCE,
        ACCEPTED_REMARK,
        WORK_PRINCIPLE,
        AFTER_CARE,
        PATIENT_WAY,
        PATIENT_FIGURE,
        PATIENT_SENTENCE,
        SOURCE,
        CHANGE_RECORD
    }

    /** What happened to it. */
    public enum Act implements Word {
        ADDED,
        REMOVED,
        CHANGED
    }

    /**
     * One aspect before and after.
     *
     * @param aspect for example "value", "condition", "reason"
     * @param before empty when there was none
     * @param after empty when there is none now
     */
    public record Detail(String aspect, String before, String after) {
        /** For example {@code value: was 5 mm, is 4 mm}. */
        public String sentence() {
            if (before.isEmpty()) {
                return aspect + ": new, " + after;
            }
            return aspect + ": " + (after.isEmpty() ? "no longer " + before : "was " + before + ", is " + after);
        }
    }

    /** Differences as plain text, in the order given; one sentence when there are none. */
    public static String text(List<Difference> differences) {
        if (differences.isEmpty()) {
            return "Nothing differs in what the rules and the knowledge say.\n";
        }
        StringBuilder text = new StringBuilder();
        for (Difference difference : differences) {
            text.append(difference.part().word().replace('-', ' '))
                    .append(' ')
                    .append(difference.id())
                    .append(' ')
                    .append(difference.act().word())
                    .append(": ")
                    .append(difference.title())
                    .append('\n');
            difference
                    .details()
                    .forEach(detail ->
                            text.append("  ").append(detail.sentence()).append('\n'));
        }
        return text.toString();
    }
}
