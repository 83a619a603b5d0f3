package org.tunica.web;

import java.util.List;
import org.tunica.frame.Frame;

/**
 * A page on which a password is set.
 *
 * @param says what it is for
 * @param action where the form goes
 * @param asks what else it asks for
 * @param name of the user, for the form and for the browser's own store of passwords
 */
record PasswordPage(
        Frame frame, String says, String action, Asks asks, String name, List<String> faults, String button) {
    /** What is asked beside the new password. */
    enum Asks {
        NAME,
        OLD_PASSWORD,
        NOTHING
    }

    /** What a password must be, in words. */
    String rule() {
        return "At least 12 characters; a few words in a row are good. It must not hold the user name.";
    }
}
