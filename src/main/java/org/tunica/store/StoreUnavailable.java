package org.tunica.store;

/** The store cannot do its work now: disk full, read-only, locked, not reached, damaged. Nothing was half written. */
public final class StoreUnavailable extends RuntimeException {
    StoreUnavailable(String message, Throwable cause) {
        super(message, cause);
    }
}
