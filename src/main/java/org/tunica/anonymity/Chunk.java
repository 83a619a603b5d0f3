package org.tunica.anonymity;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What stands between two blanks: a core with marks before and behind it.
 *
 * @param before opening marks
 * @param core the word or number; empty when this is no more than a placeholder or marks
 * @param behind closing marks
 */
record Chunk(String before, String core, String behind) {
    private static final Pattern BLANKS = Pattern.compile("[\\s\\p{Z}]+", Pattern.UNICODE_CHARACTER_CLASS);
    private static final Pattern PARTS = Pattern.compile(
            "([(<>~]?)([A-Za-z0-9%\u00b0](?:[\\x21-\\x7e\u00b0\u00b2\u2013]*[A-Za-z0-9%\u00b2])?)([.,;:!?)]{0,2})");

    /** The chunks of a text, in order; one that is made of anything unusual has no core. */
    static List<Chunk> of(String text) {
        List<Chunk> chunks = new ArrayList<>();
        for (String piece : BLANKS.split(text)) {
            if (!piece.isEmpty()) {
                chunks.add(read(piece));
            }
        }
        return chunks;
    }

    private static Chunk read(String piece) {
        Matcher parts = PARTS.matcher(piece);
        return parts.matches()
                ? new Chunk(parts.group(1), parts.group(2), parts.group(3))
                : new Chunk("", "", piece.endsWith(".") && !piece.endsWith("..") ? "." : "");
    }

    /** Whether a sentence ends behind it. */
    boolean endsSentence() {
        return behind.contains(".") || behind.contains("!") || behind.contains("?");
    }

    /** Whether it starts with a capital letter. */
    boolean capital() {
        return !core.isEmpty() && Character.isUpperCase(core.charAt(0));
    }

    @Override
    public String toString() {
        return before + core + behind;
    }
}
