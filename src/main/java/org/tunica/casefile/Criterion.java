package org.tunica.casefile;

/** What options are weighed by when it is asked how firm a ranking is; each is worth 0 at its worst and 1 at its best. */
public enum Criterion implements Word {
    WHOLE_WALL_KILL("killing the whole wall"),
    NERVE_SAFETY("sparing the nerve"),
    SKIN_SAFETY("sparing the skin"),
    DURABILITY("lasting closure"),
    SHORT_SESSION("a short session"),
    FEW_NEEDLES("few needles"),
    RULES("what the rules say for and against"),

    /** Weighed where the site gives cost classes that tell the options apart; last, so that the others keep their places. */
    LOW_COST("a low cost class");

    private final String says;

    Criterion(String says) {
        this.says = says;
    }

    /** In words that fit behind "matters more than". */
    public String says() {
        return says;
    }
}
