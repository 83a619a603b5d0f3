package org.tunica.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.tunica.casefile.Word;
import org.tunica.plan.SimilarAdvice;
import org.tunica.similar.SimilarCases;
import org.tunica.similar.SimilarFilter;

/** Past segments like those of a case, as text: a table of the nearest for each segment, and why on request. */
final class SimilarText {
    private static final int MARGIN = 2;
    private static final List<Integer> COLUMNS = List.of(6, 19, 7, 7, 7, 25);
    private static final List<String> HEADS =
            List.of("alike", "vein, level", "wall", "lumen", "nerve", "done", "what happened");
    private static final List<Integer> WHY_COLUMNS = List.of(10, 26, 18, 18, 7, 8);
    private static final List<String> WHY_HEADS = List.of("", "attribute", "here", "there", "alike", "weight", "adds");
    private static final String MISSING = "-";

    private final int width;
    private final boolean why;
    private final StringBuilder out = new StringBuilder();

    SimilarText(int width, boolean why) {
        this.width = width;
        this.why = why;
    }

    String of(SimilarCases similar) {
        line(0, similar.base());
        line(0, similar.caution());
        line(0, SimilarAdvice.SAYS);
        line(
                0,
                String.format(Locale.ROOT, "%,d treated segments in the base", similar.pastSegments())
                        + filter(similar.filter()) + ".");
        similar.segments().forEach(segment -> {
            title(segment.ref() + ", " + segment.side().word().toUpperCase(Locale.ROOT) + " " + words(segment.vein())
                    + ", " + words(segment.level()));
            table(segment.similar());
        });
        similar.byWords().ifPresent(found -> {
            title("By the words of the notes, the best fitting first");
            table(found);
        });
        return out.toString();
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

    private void table(SimilarAdvice similar) {
        line(0, considered(similar));
        if (similar.nearest().isEmpty()) {
            return;
        }
        row(COLUMNS, HEADS);
        row(COLUMNS, List.of("", "", "mm", "mm", "mm", "", ""));
        for (SimilarAdvice.Nearest one : similar.nearest()) {
            row(
                    COLUMNS,
                    List.of(
                            share(one.similarity()),
                            words(one.vein()) + ", " + words(one.level()),
                            mm(one.relaxedWallMm()),
                            mm(one.relaxedLumenMm()),
                            mm(one.nerveGapMm()),
                            one.technique() + ": " + one.settings(),
                            one.happened()));
            if (why) {
                why(one);
            }
        }
    }

    private static String considered(SimilarAdvice similar) {
        String looked = String.format(Locale.ROOT, "%,d past segments looked at", similar.considered());
        return similar.tooLittleKnown() == 0
                ? looked + "."
                : looked
                        + String.format(
                                Locale.ROOT,
                                "; of %,d too little is known to say how alike they are.",
                                similar.tooLittleKnown());
    }

    private void why(SimilarAdvice.Nearest one) {
        line(
                MARGIN,
                "Segment " + one.ref() + " of " + one.pastCase() + (one.invented() ? " (invented)" : "")
                        + one.knownShare().stream()
                                .mapToObj(known -> ": known of both " + share(OptionalDouble.of(known))
                                        + " of the weight of all attributes")
                                .findFirst()
                                .orElse("")
                        + ".");
        if (!one.why().isEmpty()) {
            row(WHY_COLUMNS, WHY_HEADS);
        }
        one.why()
                .forEach(attribute -> row(
                        WHY_COLUMNS,
                        List.of(
                                "",
                                attribute.attribute(),
                                attribute.here(),
                                attribute.there(),
                                share(OptionalDouble.of(attribute.alike())),
                                SettingText.plain(attribute.weight()),
                                String.format(Locale.ROOT, "%.3f", attribute.points()))));
        if (!one.notCompared().isEmpty()) {
            line(MARGIN, "Not compared: " + String.join("; ", one.notCompared()) + ".");
        }
        out.append('\n');
    }

    private static String share(OptionalDouble share) {
        return share.isPresent() ? String.format(Locale.ROOT, "%.2f", share.getAsDouble()) : MISSING;
    }

    private static String mm(OptionalDouble number) {
        return number.isPresent() ? SettingText.plain(number.getAsDouble()) : MISSING;
    }

    private static String words(Word word) {
        return word.word().replace('-', ' ');
    }

    private void row(List<Integer> columns, List<String> cells) {
        out.append(Wrap.table(width, columns, List.of(cells)));
    }

    private void line(int indent, String text) {
        out.append(Wrap.paragraph(width, indent, text));
    }
}
