package org.tunica.cli;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.tunica.knowledge.Knowledge;
import org.tunica.plan.Advice;
import org.tunica.plan.FirmnessAdvice;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.OptionStanding;
import org.tunica.plan.Reason;
import org.tunica.plan.SegmentAdvice;
import org.tunica.plan.SimilarAdvice;
import org.tunica.wording.FirmnessWords;
import org.tunica.wording.ForecastWords;
import org.tunica.wording.ReasonWords;
import org.tunica.wording.SegmentWords;
import org.tunica.wording.SettingWords;

/** The advice as text: per segment what is ranked with settings and cautions, then what is not ranked and why. */
final class AdviceText {
    private static final int MARGIN = 2;
    private static final int RANK = 4;
    private static final int STANDING = 12;
    private static final int INDENT = 6;
    private static final int FEW = 3;

    private final Knowledge knowledge;
    private final int width;
    private final boolean why;
    private final StringBuilder out = new StringBuilder();

    AdviceText(Knowledge knowledge, int width, boolean why) {
        this.knowledge = knowledge;
        this.width = width;
        this.why = why;
    }

    String of(Advice advice) {
        Advice.Release release = advice.release();
        paragraph(
                0,
                "Case " + advice.caseRef() + ". " + release.state().word().toUpperCase(Locale.ROOT) + " rules "
                        + release.version() + ", " + signed(release) + ", "
                        + release.digest().substring(0, 19) + ".");
        paragraph(0, advice.caution());
        advice.segments().forEach(this::segment);
        if (advice.segments().size() > 1) {
            out.append('\n');
            paragraph(
                    0,
                    "Doses and volumes are those of each segment alone. Treated in one session they add up, and so do"
                            + " both legs; the limits of a day and of a session hold for the sum.");
        }
        out.append('\n');
        paragraph(
                0,
                "Surgery, phlebectomy, liquid sclerotherapy, compression and waiting are not judged here; they stay open"
                        + " to the specialist.");
        if (why) {
            out.append(new SourceText(knowledge, width).of(advice));
        }
        return out.toString();
    }

    private static String signed(Advice.Release release) {
        return release.state() == Advice.Release.State.DRAFT ? "not signed by anyone" : "signed";
    }

    private void segment(SegmentAdvice segment) {
        out.append('\n');
        String title = "Segment " + SegmentWords.title(segment);
        paragraph(0, title);
        out.append("=".repeat(Math.min(title.length(), width))).append('\n');
        paragraph(MARGIN, SegmentWords.numbers(segment.derived()));
        out.append('\n');
        ranked(segment);
        for (OptionStanding standing :
                List.of(OptionStanding.MEASURE_FIRST, OptionStanding.NOT_IN_ROOM, OptionStanding.EXCLUDED)) {
            unranked(segment, standing);
        }
        nearMisses(segment);
        segment.firmness().ifPresent(firmness -> firmness(firmness));
        hardCase(segment.hardCase());
        segment.similar().ifPresent(this::similar);
    }

    private void similar(SimilarAdvice similar) {
        out.append('\n');
        paragraph(MARGIN, "Past segments most like this one. " + similar.says() + " " + SimilarTable.LEGEND);
        out.append(new SimilarTable(width, why).of(similar));
        similar.happened().forEach(sentence -> paragraph(MARGIN, sentence));
    }

    private void firmness(FirmnessAdvice firmness) {
        new FirmnessWords(knowledge, why).lines(firmness).forEach(line -> {
            if (line.indent() == 0) {
                out.append('\n');
            }
            paragraph(MARGIN + line.indent(), line.text());
        });
    }

    private void hardCase(List<Reason> signs) {
        if (signs.isEmpty()) {
            return;
        }
        out.append('\n');
        paragraph(MARGIN, "Signs of a hard case; look at it with colleagues:");
        signs.forEach(sign -> {
            paragraph(INDENT, ReasonWords.line(sign));
            if (why) {
                paragraph(INDENT + 2, "because " + sign.says() + ReasonWords.origin(sign));
            }
        });
    }

    private void nearMisses(SegmentAdvice segment) {
        if (segment.nearMisses().isEmpty()) {
            return;
        }
        out.append('\n');
        paragraph(MARGIN, "Close to a limit; a little difference would change how a technique stands:");
        long shown = why ? segment.nearMisses().size() : FEW;
        segment.nearMisses().stream()
                .limit(shown)
                .forEach(miss -> paragraph(INDENT, SegmentWords.nearMiss(miss, knowledge)));
        if (segment.nearMisses().size() > shown) {
            paragraph(INDENT, "and " + (segment.nearMisses().size() - shown) + " more (--why)");
        }
    }

    private void ranked(SegmentAdvice segment) {
        List<OptionAdvice> ranked = segment.options().stream()
                .filter(option -> option.standing().ranked())
                .toList();
        if (ranked.isEmpty()) {
            paragraph(MARGIN, "No technique can be ranked for this segment.");
            return;
        }
        out.append(row("", "#", "technique", "standing", "why"));
        out.append("  ").append("-".repeat(width - 2)).append('\n');
        Map<String, List<String>> shared = shared(ranked);
        for (OptionAdvice option : ranked) {
            out.append(row(
                    "",
                    Integer.toString(option.rank().orElseThrow()),
                    option.says(),
                    option.standing().word(),
                    SegmentWords.why(option)));
            details(option, shared.getOrDefault(option.family().word(), List.of()));
        }
        shared.forEach((family, parts) -> {
            if (!parts.isEmpty()) {
                paragraph(MARGIN, "All " + family.replace('-', ' ') + " above: " + String.join("; ", parts) + ".");
            }
        });
        paragraph(MARGIN, "* unverified: from memory or common practice, to be checked before use.");
    }

    /** Settings that every ranked option of a family has alike; said once below the table. */
    private Map<String, List<String>> shared(List<OptionAdvice> ranked) {
        Map<String, List<String>> shared = new TreeMap<>();
        Map<String, Integer> members = new TreeMap<>();
        for (OptionAdvice option : ranked) {
            List<String> parts = SettingWords.parts(option.settings(), knowledge);
            shared.merge(
                    option.family().word(),
                    parts,
                    (a, b) -> a.stream().filter(b::contains).toList());
            members.merge(option.family().word(), 1, Integer::sum);
        }
        members.forEach((family, count) -> {
            if (count == 1) {
                shared.remove(family);
            }
        });
        return shared;
    }

    private String row(String... cells) {
        return Wrap.table(width, List.of(MARGIN, RANK, techniqueColumn(), STANDING), List.of(List.of(cells)));
    }

    private int techniqueColumn() {
        int longest = knowledge.techniques().values().stream()
                .mapToInt(technique -> technique.says().length())
                .max()
                .orElse(20);
        return Math.min(longest + 2, width - MARGIN - RANK - STANDING - Wrap.NARROWEST);
    }

    private void details(OptionAdvice option, List<String> saidBelow) {
        ForecastWords.lines(option).forEach(line -> paragraph(INDENT, line));
        List<String> own = SettingWords.parts(option.settings(), knowledge).stream()
                .filter(part -> !saidBelow.contains(part))
                .toList();
        if (!own.isEmpty()) {
            String lead = option.predicted().heat().isPresent() ? "custom: " : "";
            paragraph(INDENT, lead + String.join("; ", own));
        }
        // the first caution of a careful option already stands in its row
        option.cautions().stream()
                .skip(option.standing() == OptionStanding.CAREFUL ? 1 : 0)
                .forEach(caution -> paragraph(INDENT, ReasonWords.lead(caution) + ReasonWords.line(caution)));
        if (why) {
            option.settings().note().ifPresent(note -> paragraph(INDENT, "note: " + note));
            reasons(option);
        }
    }

    private void reasons(OptionAdvice option) {
        option.reasons()
                .forEach(reason -> paragraph(
                        INDENT,
                        reason.stands().word().replace('-', ' ') + " " + reason.rule() + ": " + ReasonWords.text(reason)
                                + ReasonWords.origin(reason)));
        option.scoreTree().ifPresent(tree -> {
            paragraph(INDENT, "points " + SettingWords.plain(tree.value()) + ":");
            tree.parts().forEach(part -> paragraph(INDENT + 2, signedNumber(part.value()) + " " + part.says()));
            option.tie().ifPresent(tie -> paragraph(INDENT + 2, tie.says()));
        });
    }

    private static String signedNumber(double value) {
        return (value < 0 ? "" : "+") + SettingWords.plain(value);
    }

    private void unranked(SegmentAdvice segment, OptionStanding standing) {
        List<OptionAdvice> options = segment.options().stream()
                .filter(option -> option.standing() == standing)
                .toList();
        if (options.isEmpty()) {
            return;
        }
        out.append('\n');
        paragraph(MARGIN, SegmentWords.heading(standing));
        for (OptionAdvice option : options) {
            out.append(Wrap.table(
                    width,
                    List.of(INDENT, techniqueColumn()),
                    List.of(List.of("", option.says(), SegmentWords.why(option)))));
            if (why) {
                reasons(option);
            }
        }
    }

    private void paragraph(int indent, String text) {
        out.append(Wrap.paragraph(width, indent, text));
    }
}
