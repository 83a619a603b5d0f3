package org.tunica.library;

import java.util.List;
import org.tunica.frame.Frame;

/**
 * Cases that wait, shown whole.
 *
 * @param cases those asked for that still wait
 */
public record LookPage(Frame frame, List<Whole> cases) {
    public LookPage {
        cases = List.copyOf(cases);
    }

    /**
     * One of them.
     *
     * @param crowd what it would stand in, in words
     * @param told of the person, in words
     * @param notes what stays of free text
     * @param all everything that is kept, as data
     * @param digest of what is kept, to be given back
     * @param ails conditions and allergies that can be left out
     */
    public record Whole(
            String id,
            String crowd,
            List<String> told,
            List<String> notes,
            String all,
            String digest,
            List<String> ails) {
        public Whole {
            told = List.copyOf(told);
            notes = List.copyOf(notes);
            ails = List.copyOf(ails);
        }
    }
}
