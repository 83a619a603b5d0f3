package org.tunica.replay;

import org.tunica.casefile.Word;

/**
 * How much a change of one segment asks for a look, the worst first. What looks better than before is worse than what looks
 * worse: a bar that is lost can hurt someone, a bar that is new can only cost a technique.
 */
public enum Gravity implements Word {
    /** A technique now leads that the release before excludes. */
    FIRST_WAS_EXCLUDED("a technique now leads that was excluded"),
    /** A technique now leads that was careful, to be measured first, or not in the room. */
    FIRST_WAS_HELD_BACK("a technique now leads that was held back"),
    /** An option is excluded no longer. */
    EXCLUSION_LOST("an option is excluded no longer"),
    /** Something led; now nothing can be ranked. */
    NOTHING_LEADS("nothing can be ranked any more"),
    /** Another technique leads; both releases hold it suitable or better. */
    OTHER_LEADS("another technique leads"),
    /** An option stands better than before. */
    STANDS_BETTER("an option stands better"),
    /** An option is excluded that was not. */
    EXCLUSION_NEW("an option is excluded that was not"),
    /** An option stands worse than before, or is there no longer. */
    STANDS_WORSE("an option stands worse"),
    /** Settings alone are others. */
    SETTINGS("only settings are others"),
    /** Rules say something else, and it changes none of the above. */
    REASONS("only reasons are others");

    private final String says;

    Gravity(String says) {
        this.says = says;
    }

    /** In words, to be read after the name of a segment. */
    public String says() {
        return says;
    }
}
