package org.tunica.web;

import org.springframework.http.HttpStatus;
import org.springframework.web.server.ResponseStatusException;
import org.tunica.store.Page;

/**
 * Which part of a list is asked for, newest first.
 *
 * @param before only what has a smaller audit number
 * @param most how many at most
 */
record Stretch(Long before, Integer most) {
    private static final int USUAL = 50;

    Page page() {
        long from = before == null ? Long.MAX_VALUE : before;
        int length = most == null ? USUAL : most;
        if (length < 1 || length > Page.LONGEST) {
            throw new ResponseStatusException(HttpStatus.BAD_REQUEST, "most must be from 1 to " + Page.LONGEST);
        }
        return new Page(from, length);
    }
}
