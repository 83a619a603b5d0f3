package org.tunica.casefile;

import java.util.Locale;

/** One word of a closed list, spelled in files as its constant in lower case with hyphens. */
public interface Word {
    /** The name of the constant; every enum has it. */
    String name();

    /** The spelling in files, for example {@code great-saphenous}. */
    default String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
