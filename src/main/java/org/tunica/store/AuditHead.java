package org.tunica.store;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The last row of the audit trail. Whoever notes it elsewhere can prove later that the trail up to it was not written anew.
 *
 * @param number how many rows there are
 * @param hash of the last one
 */
public record AuditHead(long number, String hash) {
    private static final Pattern WRITTEN = Pattern.compile("([0-9]{1,18}):([0-9a-f]{64})");

    /** What the first row follows on. */
    static final AuditHead NONE = new AuditHead(0, "0".repeat(64));

    /**
     * Reads a head as {@link #toString()} writes it.
     *
     * @throws org.tunica.casefile.FaultyInput when it is none
     */
    public static AuditHead of(String written) {
        Matcher matcher = WRITTEN.matcher(written);
        if (!matcher.matches()) {
            throw Texts.fault(
                    written, "is no head of an audit trail, which is a number, a colon and 64 hexadecimal digits");
        }
        return new AuditHead(Long.parseLong(matcher.group(1)), matcher.group(2));
    }

    @Override
    public String toString() {
        return number + ":" + hash;
    }
}
