package org.tunica.web;

import java.time.Instant;
import java.util.Optional;
import org.tunica.releases.HandedIn;

/**
 * Where a change stands that was handed in.
 *
 * @param at when it moved last
 * @param times how often it was handed in
 * @param digest of the document with its checks
 * @param release version of a release that brings it
 */
record ChangeLine(
        String number, String state, String author, Instant at, long times, String digest, Optional<String> release) {
    static ChangeLine of(HandedIn change) {
        return new ChangeLine(
                change.number(),
                change.state().word(),
                change.author(),
                change.at(),
                change.times(),
                change.digest(),
                change.release());
    }
}
