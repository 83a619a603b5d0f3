package org.tunica.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tunica.casefile.Word;
import org.tunica.outcomes.HappenedPage;
import org.tunica.outcomes.WhatHappened;
import org.tunica.plan.SimilarAdvice;
import org.tunica.similar.SimilarCases;
import org.tunica.similar.SimilarFilter;

/** Past segments like those of a case, as text: a table of the nearest for each segment, and why on request. */
final class SimilarText {
    private final int width;
    private final SimilarTable table;
    private final HappenedPage page;
    private final StringBuilder out = new StringBuilder();

    SimilarText(int width, boolean why, HappenedPage page) {
        this.width = width;
        this.page = page;
        this.table = new SimilarTable(width, why);
    }

    String of(SimilarCases similar) {
        line(similar.base());
        line(similar.caution());
        line(SimilarAdvice.SAYS);
        line(String.format(Locale.ROOT, "%,d treated segments in the base", similar.pastSegments())
                + filter(similar.filter()) + ".");
        line(SimilarTable.LEGEND);
        similar.segments().forEach(segment -> {
            title(segment.ref() + ", " + segment.side().word().toUpperCase(Locale.ROOT) + " " + words(segment.vein())
                    + ", " + words(segment.level()));
            out.append(table.of(segment.similar()));
            segment.whatHappened()
                    .ifPresentOrElse(
                            happened -> happened(segment.ref(), happened),
                            () -> segment.similar().happened().forEach(this::line));
        });
        similar.byWords().ifPresent(found -> {
            title("By the words of the notes, the best fitting first");
            out.append(table.of(found));
            found.happened().forEach(this::line);
        });
        return out.toString();
    }

    private void happened(String ref, WhatHappened happened) {
        String whom = happened.segments().isPresent()
                ? "the " + happened.segments().getAsInt() + " past segments most like " + ref
                : "past segments most like " + ref;
        out.append(new PaperText(width).of(page.sections(whom, happened)));
    }

    private static String filter(SimilarFilter filter) {
        List<String> parts = new ArrayList<>();
        filter.technique().ifPresent(id -> parts.add("treated with " + id));
        filter.outcome()
                .ifPresent(outcome -> parts.add(
                        outcome == SimilarFilter.Outcome.CLOSED
                                ? "closed at the last scan"
                                : "not closed at the last scan"));
        filter.site().ifPresent(site -> parts.add("of " + site));
        filter.words().ifPresent(words -> parts.add("with notes that hold each of \"" + words + "\""));
        return parts.isEmpty() ? "" : "; looked at those " + String.join(" and ", parts);
    }

    private void title(String title) {
        out.append('\n')
                .append(title)
                .append('\n')
                .append("=".repeat(title.length()))
                .append('\n');
    }

    private static String words(Word word) {
        return word.word().replace('-', ' ');
    }

    private void line(String text) {
        out.append(Wrap.paragraph(width, 0, text));
    }
}
