package org.tunica.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.tunica.paper.Block;
import org.tunica.paper.Document;
import org.tunica.plan.Advice;

/** A replay as a page for those who decide about a release: the same words on paper and as text. */
public final class ReplayPage {
    private static final int MOST_CAUSES = 40;
    private static final int MOST_SEGMENTS = 20;
    private static final String INVENTED =
            "INVENTED: cases of people who never were are among these. They show what rules do, not how people fare.";

    private final SegmentBlocks segments;

    /** @param techniques techniques in words, by id */
    public ReplayPage(Map<String, String> techniques) {
        this.segments = new SegmentBlocks(techniques);
    }

    /** The page of a result. */
    public Document of(ReplayResult result) {
        List<Document.Section> sections = new ArrayList<>();
        sections.add(new Document.Section("What was compared", compared(result)));
        sections.add(new Document.Section("At a glance", glance(result)));
        if (!result.causes().isEmpty()) {
            sections.add(new Document.Section("Why", causes(result)));
            sections.add(new Document.Section("The gravest segments", worst(result)));
        }
        if (result.unreadableCount() > 0) {
            sections.add(new Document.Section("Cases the draft cannot read", unreadable(result)));
        }
        sections.add(new Document.Section("How to read this", List.of(new Block.Points(reading(result)))));
        return new Document(
                "en",
                "Replay of two releases",
                name(result.draft()) + " against " + name(result.against()),
                result.draft().state() == Advice.Release.State.DRAFT ? "DRAFT" : "",
                result.cases().invented() ? List.of(result.caution(), INVENTED) : List.of(result.caution()),
                sections);
    }

    private static String name(Advice.Release release) {
        return release.version() + " (" + release.state().word() + ", "
                + release.digest().substring("sha256:".length(), "sha256:".length() + 12) + ")";
    }

    private static List<Block> compared(ReplayResult result) {
        List<Block.Line> lines = new ArrayList<>();
        lines.add(new Block.Line("Draft", name(result.draft())));
        lines.add(new Block.Line("Against", name(result.against())));
        result.cases().says().forEach(says -> lines.add(new Block.Line("Cases", says)));
        lines.add(new Block.Line(
                "Replayed",
                count(result.cases().casesCount(), "case") + " with "
                        + count(result.cases().segmentsCount(), "segment")));
        lines.add(new Block.Line(
                "Judged again by the rule engine",
                count(result.cases().checkedCount(), "case") + ", to hold the replay against it"));
        result.digest().ifPresent(digest -> lines.add(new Block.Line("Digest of this result", digest)));
        return List.of(new Block.Lines(lines));
    }

    private static List<Block> glance(ReplayResult result) {
        if (result.same()) {
            return List.of(new Block.Paragraph("Every segment of every case comes out the same."));
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(count(result.changedSegmentsCount(), "segment") + " of "
                + count(result.changedCasesCount(), "case") + (result.changedSegmentsCount() == 1 ? " comes" : " come")
                + " out otherwise; " + count(result.unchangedSegmentsCount(), "segment") + " the same."));
        blocks.add(new Block.Lines(result.kinds().stream()
                .map(kind -> new Block.Line(
                        words(kind.kind()),
                        count(kind.segmentsCount(), "segment") + " of " + count(kind.casesCount(), "case")))
                .toList()));
        if (!result.gravities().isEmpty()) {
            blocks.add(new Block.Table(
                    List.of("Worst first", "Segments"),
                    result.gravities().stream()
                            .map(one -> List.of(one.says(), number(one.segmentsCount())))
                            .toList()));
        }
        return blocks;
    }

    private static String words(ChangedSegment.Kind kind) {
        return switch (kind) {
            case FIRST_OPTION -> "Another first option";
            case STANDING -> "An option stands otherwise";
            case SETTINGS -> "Other settings";
            case REASONS -> "Other reasons alone";
        };
    }

    private static List<Block> causes(ReplayResult result) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph("A segment with several causes is counted under each."));
        result.causes().stream().limit(MOST_CAUSES).forEach(cause -> {
            blocks.add(new Block.Heading(cause.heading()));
            blocks.add(new Block.Lines(cause(cause)));
        });
        int more = result.causes().size() - MOST_CAUSES;
        if (more > 0) {
            blocks.add(new Block.Paragraph("and " + count(more, "more cause") + ", listed in the JSON"));
        }
        return blocks;
    }

    private static List<Block.Line> cause(Cause cause) {
        List<Block.Line> lines = new ArrayList<>();
        lines.add(new Block.Line(cause.rule().isPresent() ? "Speaks when" : "What moved", cause.says()));
        cause.limits().forEach(limit -> lines.add(new Block.Line("Number that moved", limit.sentence())));
        lines.add(new Block.Line(
                "Concerns", count(cause.segmentsCount(), "segment") + " of " + count(cause.casesCount(), "case")));
        lines.add(new Block.Line(
                "Of these",
                String.join(
                        "; ",
                        cause.kinds().stream()
                                .map(kind -> words(kind.kind()).toLowerCase(Locale.ROOT) + ": "
                                        + number(kind.segmentsCount()))
                                .toList())));
        lines.add(
                new Block.Line("At worst", cause.gravity().says() + " (" + String.join("; ", cause.examples()) + ")"));
        return lines;
    }

    private List<Block> worst(ReplayResult result) {
        List<Block> blocks = new ArrayList<>();
        result.worst().stream().limit(MOST_SEGMENTS).forEach(one -> blocks.addAll(segments.of(one)));
        int more = result.changedSegmentsCount() - MOST_SEGMENTS;
        if (more > 0) {
            blocks.add(new Block.Paragraph("and " + count(more, "more segment") + "; the JSON lists up to "
                    + ReplayResult.MOST_LISTED + " by name"));
        }
        return blocks;
    }

    private static List<Block> unreadable(ReplayResult result) {
        return List.of(
                new Block.Warning(count(result.unreadableCount(), "case")
                        + " that the draft refuses and the other release can read. They were not compared."),
                new Block.Lines(result.unreadable().stream()
                        .limit(MOST_SEGMENTS)
                        .map(one -> new Block.Line(one.caseRef(), String.join("; ", one.faults())))
                        .toList()));
    }

    private static List<String> reading(ReplayResult result) {
        List<String> points = new ArrayList<>();
        points.add(
                "The gravest comes first: a technique that now leads and was excluded or held back, then exclusions that"
                        + " are lost, before anything that has become stricter.");
        points.add(
                "A change of a past case says what would be advised today. It does not say that what was done then was"
                        + " wrong.");
        points.add("Not compared: " + String.join("; ", result.notCompared()) + ".");
        return points;
    }

    static String count(int number, String noun) {
        return number(number) + " " + noun + (number == 1 ? "" : "s");
    }

    private static String number(int number) {
        return String.format(Locale.ROOT, "%,d", number);
    }
}
