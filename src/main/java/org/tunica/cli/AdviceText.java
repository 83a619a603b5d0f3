package org.tunica.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Standing;
import org.tunica.plan.Advice;
import org.tunica.plan.FirmnessAdvice;
import org.tunica.plan.NearMissAdvice;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.OptionStanding;
import org.tunica.plan.Reason;
import org.tunica.plan.SegmentAdvice;
import org.tunica.plan.SimilarAdvice;
import org.tunica.rules.Conclusion;

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
        String title = "Segment " + segment.ref() + ": " + segment.side().word().toUpperCase(Locale.ROOT) + " leg, "
                + segment.vein().word().replace('-', ' ') + ", "
                + segment.level().word().replace('-', ' ');
        paragraph(0, title);
        out.append("=".repeat(Math.min(title.length(), width))).append('\n');
        paragraph(MARGIN, numbers(segment.derived()));
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
        new FirmnessText(knowledge, why).lines(firmness).forEach(line -> {
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
            paragraph(INDENT, line(sign));
            if (why) {
                paragraph(INDENT + 2, "because " + sign.says() + origin(sign));
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
        segment.nearMisses().stream().limit(shown).forEach(miss -> paragraph(INDENT, line(miss)));
        if (segment.nearMisses().size() > shown) {
            paragraph(INDENT, "and " + (segment.nearMisses().size() - shown) + " more (--why)");
        }
    }

    private String line(NearMissAdvice miss) {
        List<String> names = miss.techniques().stream()
                .map(id -> knowledge.technique(id).says())
                .toList();
        String who = names.size() <= FEW ? String.join(", ", names) : names.size() + " techniques";
        return "were " + miss.wouldNeed() + ": " + who + " would stand as "
                + miss.to().word() + " instead of " + miss.from().word() + " (" + miss.rule() + ")";
    }

    private static String numbers(SegmentAdvice.DerivedAdvice derived) {
        List<String> parts = new ArrayList<>();
        parts.add("lumen relaxed " + known(derived.relaxedLumenMm(), " mm")
                + (derived.standingEstimated() ? " (standing, estimated from lying)" : ""));
        parts.add("wall relaxed " + known(derived.relaxedWallMm(), " mm"));
        parts.add("wall pressed shut " + known(derived.collapsedWallMm(), " mm"));
        parts.add("lumen volume " + known(derived.lumenVolumeMl(), " mL"));
        parts.add("bloodless with tumescence and head-down: "
                + derived.bloodless().map(yes -> yes ? "yes" : "no").orElse("not known"));
        return "Computed: " + String.join("; ", parts) + ".";
    }

    private static String known(OptionalDouble value, String unit) {
        return value.isPresent() ? SettingText.plain(value.getAsDouble()) + unit : "not known";
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
                    why(option)));
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
            List<String> parts = SettingText.parts(option.settings(), knowledge);
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
        ForecastText.lines(option).forEach(line -> paragraph(INDENT, line));
        List<String> own = SettingText.parts(option.settings(), knowledge).stream()
                .filter(part -> !saidBelow.contains(part))
                .toList();
        if (!own.isEmpty()) {
            String lead = option.predicted().heat().isPresent() ? "custom: " : "";
            paragraph(INDENT, lead + String.join("; ", own));
        }
        // the first caution of a careful option already stands in its row
        option.cautions().stream()
                .skip(option.standing() == OptionStanding.CAREFUL ? 1 : 0)
                .forEach(caution -> paragraph(INDENT, lead(caution) + line(caution)));
        if (why) {
            option.settings().note().ifPresent(note -> paragraph(INDENT, "note: " + note));
            reasons(option);
        }
    }

    /** What could harm for good must not read like counsel. */
    private static String lead(Reason caution) {
        return switch (caution.strength().orElse(Conclusion.Strength.MODERATE)) {
            case FIRST_CHOICE, STRONG -> "strong caution: ";
            case MODERATE -> "caution: ";
            case SLIGHT -> "counsel: ";
        };
    }

    private static String line(Reason caution) {
        String doubt =
                caution.inDoubt().isEmpty() ? "" : "; in doubt, not recorded: " + String.join(", ", caution.inDoubt());
        return caution.title() + " (" + caution.rule() + mark(caution) + ")" + doubt;
    }

    /** The line with an asterisk behind the rule it names, when that rule is unverified. */
    private static String why(OptionAdvice option) {
        return Stream.of(option.reasons(), option.cautions(), option.needs())
                .flatMap(List::stream)
                .filter(reason -> option.why().contains("(" + reason.rule() + ")"))
                .findFirst()
                .map(reason -> option.why().replace(reason.rule(), reason.rule() + mark(reason)))
                .orElse(option.why());
    }

    private static String mark(Reason reason) {
        return reason.standing() == Standing.UNVERIFIED ? "*" : "";
    }

    private void reasons(OptionAdvice option) {
        option.reasons()
                .forEach(reason -> paragraph(
                        INDENT,
                        reason.stands().word().replace('-', ' ') + " " + reason.rule() + ": " + text(reason)
                                + origin(reason)));
        option.scoreTree().ifPresent(tree -> {
            paragraph(INDENT, "points " + SettingText.plain(tree.value()) + ":");
            tree.parts().forEach(part -> paragraph(INDENT + 2, signedNumber(part.value()) + " " + part.says()));
            option.tie().ifPresent(tie -> paragraph(INDENT + 2, tie.says()));
        });
    }

    private static String signedNumber(double value) {
        return (value < 0 ? "" : "+") + SettingText.plain(value);
    }

    private static String origin(Reason reason) {
        String limits = reason.limits().isEmpty() ? "" : "; limits " + String.join(", ", reason.limits());
        return " [" + reason.source() + ", " + reason.standing().word() + ", change " + reason.change() + limits + "]";
    }

    private static String text(Reason reason) {
        String doubt = reason.inDoubt().isEmpty()
                ? ""
                : " (in doubt, not recorded: " + String.join(", ", reason.inDoubt()) + ")";
        return reason.title() + ", because " + reason.says() + doubt;
    }

    private void unranked(SegmentAdvice segment, OptionStanding standing) {
        List<OptionAdvice> options = segment.options().stream()
                .filter(option -> option.standing() == standing)
                .toList();
        if (options.isEmpty()) {
            return;
        }
        out.append('\n');
        paragraph(MARGIN, heading(standing));
        for (OptionAdvice option : options) {
            out.append(Wrap.table(
                    width, List.of(INDENT, techniqueColumn()), List.of(List.of("", option.says(), why(option)))));
            if (why) {
                reasons(option);
            }
        }
    }

    private static String heading(OptionStanding standing) {
        return switch (standing) {
            case MEASURE_FIRST -> "Measure first, then ask again:";
            case NOT_IN_ROOM -> "Not in the room:";
            case EXCLUDED -> "Excluded:";
            case PREFERRED, SUITABLE, CAREFUL -> throw new IllegalArgumentException("ranked: " + standing);
        };
    }

    private void paragraph(int indent, String text) {
        out.append(Wrap.paragraph(width, indent, text));
    }
}
