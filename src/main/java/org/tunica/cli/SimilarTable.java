package org.tunica.cli;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.tunica.casefile.Word;
import org.tunica.plan.SimilarAdvice;
import org.tunica.wording.SettingWords;

/** Past segments like one of a case, as a table, and why on request. */
final class SimilarTable {
    /** What the first two columns mean. */
    static final String LEGEND =
            "Alike: 1 is the same, over what is known of both. Known: the share of the weight of all"
                    + " attributes that could be compared; the less, the less alike means.";

    private static final int MARGIN = 2;
    private static final List<Integer> COLUMNS = List.of(6, 6, 22, 6, 6, 6, 26);
    private static final List<String> HEADS =
            List.of("alike", "known", "vein, level", "wall", "lumen", "nerve", "done", "what happened");
    private static final List<Integer> WHY_COLUMNS = List.of(10, 26, 18, 18, 7, 8);
    private static final List<String> WHY_HEADS = List.of("", "attribute", "here", "there", "alike", "weight", "adds");
    private static final String MISSING = "-";

    private final int width;
    private final boolean why;
    private final StringBuilder out = new StringBuilder();

    SimilarTable(int width, boolean why) {
        this.width = width;
        this.why = why;
    }

    /** The table; what must be said beside it stands elsewhere. */
    String of(SimilarAdvice similar) {
        out.setLength(0);
        line(0, considered(similar));
        if (similar.nearest().isEmpty()) {
            return out.toString();
        }
        row(COLUMNS, HEADS);
        row(COLUMNS, List.of("", "", "", "mm", "mm", "mm", "", ""));
        for (SimilarAdvice.Nearest one : similar.nearest()) {
            row(
                    COLUMNS,
                    List.of(
                            share(one.similarity()),
                            share(one.knownShare()),
                            words(one.vein()) + ", " + words(one.level()),
                            mm(one.relaxedWallMm()),
                            mm(one.relaxedLumenMm()),
                            mm(one.nerveGapMm()),
                            one.technique() + ": " + one.settings(),
                            one.happened() + (one.invented() ? "; INVENTED" : "")));
            if (why) {
                why(one);
            }
        }
        return out.toString();
    }

    private static String considered(SimilarAdvice similar) {
        if (similar.considered() == 0) {
            return "No past segment fits what was asked for.";
        }
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
                                SettingWords.plain(attribute.weight()),
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
        return number.isPresent() ? SettingWords.plain(number.getAsDouble()) : MISSING;
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
