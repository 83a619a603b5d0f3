package org.tunica.frame;

/** Nothing is kept under that name. */
public final class NotThere extends RuntimeException {
    /** @param what is not there, in words */
    public NotThere(String what) {
        super(what);
    }
}
