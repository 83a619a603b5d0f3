package org.tunica.knowledge;

import java.util.List;

/**
 * What the program is for and what it is not for, in plain words.
 *
 * @param says the purpose in a sentence
 * @param users who may use it
 * @param uses when they may
 * @param notFor what it must not be used for
 * @param limits what is known not to be good enough yet
 */
public record IntendedUse(
        String says, List<String> users, List<String> uses, List<String> notFor, List<String> limits) {
    public IntendedUse {
        users = List.copyOf(users);
        uses = List.copyOf(uses);
        notFor = List.copyOf(notFor);
        limits = List.copyOf(limits);
    }
}
