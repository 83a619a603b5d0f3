package org.tunica.store;

/** Somebody else was faster: what was to be changed is no longer as it was seen. Nothing was written. */
public final class OutOfDate extends RuntimeException {
    OutOfDate(String message) {
        super(message);
    }
}
