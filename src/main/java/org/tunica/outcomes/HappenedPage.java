package org.tunica.outcomes;

import java.util.ArrayList;
import java.util.List;
import org.tunica.paper.Block;
import org.tunica.paper.Document;

/** What happened to a group of past segments, as sections of a page. */
public final class HappenedPage {
    private final OutcomeBlocks outcomes;

    /** With the numbers of a release. */
    public HappenedPage(OutcomeNumbers numbers) {
        this.outcomes = new OutcomeBlocks(numbers);
    }

    /**
     * The sections.
     *
     * @param whom of whom it tells, such as "the 100 past segments most like L1"
     */
    public List<Document.Section> sections(String whom, WhatHappened happened) {
        List<Document.Section> sections = new ArrayList<>();
        sections.add(new Document.Section("What happened to " + whom, counts(happened)));
        happened.techniques()
                .forEach(outcome ->
                        sections.add(new Document.Section(OutcomeBlocks.heading(outcome), outcomes.all(outcome))));
        sections.add(new Document.Section("How to read these figures", List.of(new Block.Points(happened.cautions()))));
        return sections;
    }

    private static List<Block> counts(WhatHappened happened) {
        List<Block> blocks = new ArrayList<>();
        if (happened.invented()) {
            blocks.add(new Block.Warning(Cautions.INVENTED));
        }
        String all = happened.segments().isPresent()
                ? happened.segments().getAsInt() + " treated segments"
                : "The number of all is not told, for it would tell the size of a small group";
        blocks.add(new Block.Paragraph(all + ". Never followed: " + Said.counted(happened.neverFollowed()) + "."));
        if (!happened.notTold().isEmpty()) {
            blocks.add(new Block.Heading("Too few to tell of"));
            blocks.add(new Block.Points(OutcomeBlocks.notTold(happened.notTold())));
        }
        return blocks;
    }
}
