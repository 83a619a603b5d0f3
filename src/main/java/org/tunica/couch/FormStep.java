package org.tunica.couch;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tunica.casefile.CaseFile;

/**
 * A step on the way to a case that changes what the form asks and saves nothing.
 *
 * @param typed the form afterwards
 * @param at the block to go on with
 */
record FormStep(Typed typed, String at) {
    static final int MOST_LEGS = 2;
    private static final Pattern STEP =
            Pattern.compile("(add-leg|add|copy|remove)(?: (limbs\\[([0-9])](?:\\.segments\\[([0-9]{1,2})])?))?");

    /**
     * What a button asks for; empty when it saves.
     *
     * @param wanted the value of the button
     */
    static Optional<FormStep> of(String wanted, Typed typed) {
        Matcher step = STEP.matcher(wanted);
        if (!step.matches()) {
            return Optional.empty();
        }
        if (step.group(1).equals("add-leg")) {
            return Optional.of(addLeg(typed));
        }
        if (step.group(2) == null) {
            return Optional.empty();
        }
        int leg = Integer.parseInt(step.group(3));
        return Optional.of(
                switch (step.group(1)) {
                    case "add" -> addSegment(typed, leg);
                    case "copy" -> copy(typed, step.group(2), leg);
                    default -> new FormStep(typed.without(step.group(2)), Typed.leg(0));
                });
    }

    private static FormStep addLeg(Typed typed) {
        int legs = typed.legs();
        return legs >= MOST_LEGS ? new FormStep(typed, Typed.leg(0)) : addSegment(typed, legs);
    }

    private static FormStep addSegment(Typed typed, int leg) {
        int segments = typed.segments(leg);
        String block = Typed.segment(leg, segments);
        return segments >= CaseFile.MOST_SEGMENTS
                ? new FormStep(typed, Typed.leg(leg))
                : new FormStep(typed.with(block + ".ref", ""), block);
    }

    /** A copy is another segment, so it needs another name. */
    private static FormStep copy(Typed typed, String from, int leg) {
        FormStep added = addSegment(typed, leg);
        return added.at().equals(Typed.leg(leg))
                ? added
                : new FormStep(added.typed().copied(from, added.at()).with(added.at() + ".ref", ""), added.at());
    }
}
