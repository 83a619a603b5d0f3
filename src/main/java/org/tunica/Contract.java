package org.tunica;

import java.util.Arrays;
import java.util.Optional;
import org.tunica.casefile.Word;

/** What goes in and out as JSON, and has a JSON Schema (2020-12). */
public enum Contract implements Word {
    CASE,
    ADVICE,
    PLAN,
    DELIVERED,
    FOLLOWUP,
    PAST,
    SIMILAR,
    AUDIT,
    REPLAY;

    /** The contract of that name. */
    public static Optional<Contract> named(String name) {
        return Arrays.stream(values())
                .filter(contract -> contract.word().equals(name))
                .findFirst();
    }

    @Override
    public String toString() {
        return word();
    }
}
