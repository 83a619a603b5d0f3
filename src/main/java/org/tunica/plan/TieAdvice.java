package org.tunica.plan;

import org.tunica.casefile.Word;

/**
 * Why an option stands before the next one, with which it is even on standing and points.
 *
 * @param against the technique it is even with
 * @param settledBy what decided between the two
 * @param says the same in words
 */
public record TieAdvice(String against, SettledBy settledBy, String says) {

    /** What may decide, in the order it is asked. */
    public enum SettledBy implements Word {
        WHOLE_WALL_KILL,
        CHAR,
        NERVE_WARMTH,
        DURABILITY,
        /** Nothing else; no reason. */
        NAME
    }
}
