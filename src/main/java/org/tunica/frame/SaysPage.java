package org.tunica.frame;

import java.util.List;

/**
 * A page that says something and leads on.
 *
 * @param ways where one can go from here
 */
public record SaysPage(Frame frame, List<String> says, List<Way> ways) {
    /** A link. */
    public record Way(String to, String says) {}
}
