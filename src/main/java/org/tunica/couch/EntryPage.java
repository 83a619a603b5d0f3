package org.tunica.couch;

import java.util.List;
import org.tunica.frame.Frame;

/**
 * A form on which something is recorded that belongs to a case.
 *
 * @param action where it is sent
 * @param intro what it is for and what it rests on
 * @param head what is asked once
 * @param parts what is asked of each segment
 * @param mends what must be mended
 * @param button what saving does, in words
 */
public record EntryPage(
        Frame frame,
        String caseRef,
        String action,
        List<String> intro,
        FormBlock head,
        List<Part> parts,
        List<CaseForm.Mend> mends,
        String button) {
    /**
     * One segment.
     *
     * @param says what is known of it, such as what was intended
     * @param confirm name of the field by which its values are confirmed; empty where nothing is
     * @param confirmed whether they are
     */
    public record Part(FormBlock block, List<String> says, String confirm, boolean confirmed) {}

    public EntryPage {
        intro = List.copyOf(intro);
        parts = List.copyOf(parts);
        mends = List.copyOf(mends);
    }
}
