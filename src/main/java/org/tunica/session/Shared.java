package org.tunica.session;

import java.util.List;
import org.tunica.casefile.Word;

/** What the segments of one session share and a limit is set for. */
public enum Shared implements Word {
    /** Tumescent lidocaine, mg/kg. */
    LIDOCAINE("lidocaine", "mg/kg"),
    /** Polidocanol of a day, mg/kg. */
    POLIDOCANOL("polidocanol", "mg/kg"),
    /** Polidocanol given as liquid, mL. */
    POLIDOCANOL_LIQUID("polidocanol liquid", "mL"),
    /** Sodium tetradecyl sulphate, as a share of what a session may take at its strength and form. */
    TETRADECYL("tetradecyl sulphate", "1"),
    /** Foam of all drugs, mL. */
    FOAM("foam", "mL"),
    /** Time the room is free, minutes. */
    TIME("time", "min"),
    /** Kinds of heat generator set up. */
    GENERATOR("heat generators", "1");

    /** Shares that add up, segment by segment; generators are counted by kind. */
    static final List<Shared> AMOUNTS = List.of(LIDOCAINE, POLIDOCANOL, POLIDOCANOL_LIQUID, TETRADECYL, FOAM, TIME);

    private final String says;
    private final String unit;

    Shared(String says, String unit) {
        this.says = says;
        this.unit = unit;
    }

    /** In words. */
    public String says() {
        return says;
    }

    /** UCUM code. */
    public String unit() {
        return unit;
    }
}
