package org.tunica.web;

/** Nothing is kept under that name. */
final class NotThere extends RuntimeException {
    NotThere(String what) {
        super(what);
    }
}
