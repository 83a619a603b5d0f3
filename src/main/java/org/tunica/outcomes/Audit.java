package org.tunica.outcomes;

import java.util.List;
import java.util.OptionalInt;

/**
 * Results held against what was to be expected: {@code tunica-audit/1}.
 *
 * @param asked which past cases were looked at
 * @param invented whether any of them is made up
 * @param segments how many treated segments were looked at; absent when that would tell the size of a group that is hidden
 * @param withoutYear how many of them have no year of treatment
 * @param neverFollowed how many have no follow-up at all
 * @param techniques the largest group first
 * @param notTold groups too small to tell of
 * @param compared curves held against each other, for each definition of closure
 * @param seed of every draw, so that the limits of charts can be repeated
 */
public record Audit(
        String format,
        String caution,
        AuditQuestion asked,
        boolean invented,
        OptionalInt segments,
        Counted withoutYear,
        Counted neverFollowed,
        List<AuditedTechnique> techniques,
        List<NotTold> notTold,
        List<Compared> compared,
        List<String> cautions,
        long seed) {
    /** The format of this record. */
    public static final String FORMAT = "tunica-audit/1";

    public Audit {
        techniques = List.copyOf(techniques);
        notTold = List.copyOf(notTold);
        compared = List.copyOf(compared);
        cautions = List.copyOf(cautions);
    }
}
