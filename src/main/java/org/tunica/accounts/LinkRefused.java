package org.tunica.accounts;

/** A link that leads nowhere: used, too old, or never given out. Which of them is not told. */
public final class LinkRefused extends RuntimeException {
    /** A link that cannot be used. */
    public LinkRefused() {
        super("the link was used already, is too old, or was never given out");
    }
}
