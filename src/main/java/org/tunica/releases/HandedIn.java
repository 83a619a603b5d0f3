package org.tunica.releases;

import java.time.Instant;
import java.util.Optional;

/**
 * A proposed change that was handed in.
 *
 * @param number of its change record
 * @param author user name
 * @param at when it was handed in last, or taken back
 * @param times how often it was handed in
 * @param digest of the document with its checks
 * @param document the document, {@code tunica-change-check/1}
 * @param release version of a release that brings it
 */
public record HandedIn(
        String number,
        ChangeState state,
        String author,
        Instant at,
        long times,
        String digest,
        String document,
        Optional<String> release) {}
