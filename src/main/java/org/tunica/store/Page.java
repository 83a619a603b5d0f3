package org.tunica.store;

/**
 * A stretch of a list that is read newest first.
 *
 * @param before only what has a smaller audit number
 * @param most how many at most
 */
public record Page(long before, int most) {
    /** The most entries of one page. */
    public static final int LONGEST = 1_000;

    public Page {
        if (most < 1 || most > LONGEST) {
            throw new IllegalArgumentException("a page holds 1 to " + LONGEST + " entries, got " + most);
        }
    }

    /** The newest entries. */
    public static Page newest(int most) {
        return new Page(Long.MAX_VALUE, most);
    }

    /** What comes after the last entry of the page before. */
    public Page after(Stamp last) {
        return new Page(last.auditNumber(), most);
    }
}
