package org.tunica.anonymity;

import java.util.ArrayList;
import java.util.List;

/**
 * Reduces a free text to the words of a vocabulary and to measurements. What is left out leaves one placeholder, however
 * much it was.
 *
 * <p>It looks for nothing that could name somebody: names, dates and numbers have no end of forms. It keeps what is known to
 * be harmless. A text that comes out goes in again and comes out the same.
 */
public final class Scrubber {
    /** What stands for everything left out. */
    public static final String PLACEHOLDER = "[...]";

    private final Vocabulary vocabulary;
    private final Phrases phrases;

    /** A scrubber that lets a vocabulary through. */
    public Scrubber(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
        this.phrases = new Phrases(vocabulary);
    }

    /** What may stay of a text, on one line; nothing when nothing but placeholders would. */
    public String scrub(String text) {
        String before = text;
        String after = once(before);
        // what is left out can take the ground from what stood beside it, so it is looked at until nothing more goes
        while (!after.equals(before)) {
            before = after;
            after = once(before);
        }
        return after;
    }

    /** Whether a text is as it would come out. */
    public boolean clean(String text) {
        return scrub(text).equals(text);
    }

    private String once(String text) {
        List<Chunk> chunks = Chunk.of(text);
        boolean[] keep = new Verdicts(vocabulary, phrases, chunks).keep();
        List<String> out = new ArrayList<>();
        boolean words = false;
        for (int i = 0; i < keep.length; i++) {
            if (keep[i]) {
                out.add(chunks.get(i).toString());
                words = true;
            } else {
                placeholder(out, chunks.get(i));
            }
        }
        return words ? String.join(" ", out) : "";
    }

    private static void placeholder(List<String> out, Chunk chunk) {
        String shown = PLACEHOLDER + (chunk.endsSentence() ? "." : "");
        int last = out.size() - 1;
        if (last >= 0 && out.get(last).startsWith(PLACEHOLDER)) {
            out.set(last, shown);
        } else {
            out.add(shown);
        }
    }
}
