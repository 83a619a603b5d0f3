package org.tunica.web;

import java.util.List;

/**
 * A page that says something and leads on.
 *
 * @param ways where one can go from here
 */
record SaysPage(Frame frame, List<String> says, List<Way> ways) {
    /** A link. */
    record Way(String to, String says) {}
}
