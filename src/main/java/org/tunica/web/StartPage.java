package org.tunica.web;

import java.util.List;
import org.tunica.frame.Frame;

/**
 * The page after signing in: what is here.
 *
 * @param roles of the reader
 * @param places open to the reader
 * @param cases whether the pages of cases are open to the reader
 * @param governance whether the pages of the governance team are
 * @param ownPassword whether the reader has a password of this server
 */
record StartPage(
        Frame frame, List<String> roles, List<Place> places, boolean cases, boolean governance, boolean ownPassword) {
    /** An address and what it does. */
    record Place(String address, String says) {}
}
