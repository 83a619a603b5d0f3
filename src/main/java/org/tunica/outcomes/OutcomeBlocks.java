package org.tunica.outcomes;

import java.util.ArrayList;
import java.util.List;
import org.tunica.paper.Block;
import org.tunica.statistics.SurvivalAt;

/** The outcome of one technique as parts of a page. */
final class OutcomeBlocks {
    private final double confidence;

    OutcomeBlocks(OutcomeNumbers numbers) {
        this.confidence = numbers.confidenceShare();
    }

    /** Such as "1470 nm radial fibre, by the definition adhesive open stump". */
    static String heading(TechniqueOutcome outcome) {
        return outcome.says() + ", by the definition " + Said.words(outcome.closure());
    }

    List<Block> all(TechniqueOutcome outcome) {
        List<Block> blocks = new ArrayList<>(counted(outcome));
        blocks.addAll(stayed(outcome));
        blocks.addAll(wentWrong(outcome));
        return blocks;
    }

    List<Block> counted(TechniqueOutcome outcome) {
        List<List<String>> rows = outcome.closed().stream()
                .map(at -> {
                    Horizon horizon = at.horizon();
                    return List.of(
                            Integer.toString(horizon.daysAfter()),
                            horizon.fromDaysAfter() + " to " + horizon.toDaysAfter(),
                            Said.counted(at.closed()),
                            Said.share(at.closed()),
                            Said.limits(at.closed()));
                })
                .toList();
        return List.of(
                new Block.Paragraph(outcome.segments() + " segments of " + outcome.people()
                        + " past cases. Closed means: " + outcome.closedMeans() + "."),
                new Block.Heading("Closed, of those scanned about that day"),
                new Block.Table(List.of("day", "scanned on day", "closed", "share", Said.limitsOf(confidence)), rows));
    }

    /** The curve at the days of count. */
    List<Block> stayed(TechniqueOutcome outcome) {
        Block.Heading heading = new Block.Heading("Stayed closed up to that day, by Kaplan and Meier");
        if (outcome.staying().isEmpty()) {
            return List.of(heading, new Block.Paragraph("Not told: too few were ever scanned, or none."));
        }
        StayingClosed staying = outcome.staying().get();
        List<List<String>> rows = staying.at().stream().map(OutcomeBlocks::row).toList();
        List<Block> blocks = new ArrayList<>();
        blocks.add(heading);
        if (rows.isEmpty()) {
            blocks.add(new Block.Paragraph("No day of count was reached."));
        } else {
            blocks.add(new Block.Table(
                    List.of("day", "closed and followed", "stayed closed", Said.limitsOf(confidence)), rows));
        }
        staying.endsAfterDays()
                .ifPresent(day -> blocks.add(new Block.Paragraph(
                        "After day " + day + " too few were still followed: the curve is not told further.")));
        return blocks;
    }

    private static List<String> row(SurvivalAt at) {
        String limits = Said.limits(at.free().lowShare(), at.free().highShare());
        return List.of(
                Integer.toString(at.daysAfter()),
                Integer.toString(at.atRisk()),
                Said.percent(at.free().freeShare()),
                limits.isEmpty() ? "none at this share" : limits);
    }

    List<Block> wentWrong(TechniqueOutcome outcome) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading("What went wrong, of those asked about it"));
        blocks.add(new Block.Paragraph("Asked at any visit: " + Said.counted(outcome.askedAboutComplications()) + "."));
        if (!outcome.complications().isEmpty()) {
            blocks.add(new Block.Table(
                    List.of("complication", "had it", "share", Said.limitsOf(confidence), "severe or worse"),
                    outcome.complications().stream()
                            .map(went -> List.of(
                                    Said.words(went.kind()),
                                    Said.counted(went.had()),
                                    Said.share(went.had()),
                                    Said.limits(went.had()),
                                    Said.counted(went.severe())))
                            .toList()));
        }
        if (!outcome.deepEnd().isEmpty()) {
            blocks.add(new Block.Heading("At the deep end at its worst, of those looked at there"));
            blocks.add(new Block.Table(
                    List.of("seen", "segments", "share", Said.limitsOf(confidence)),
                    outcome.deepEnd().stream()
                            .map(end -> List.of(
                                    Said.words(end.worst()),
                                    Said.counted(end.seen()),
                                    Said.share(end.seen()),
                                    Said.limits(end.seen())))
                            .toList()));
        }
        return blocks;
    }

    /** Groups that are there and not told of. */
    static List<String> notTold(List<NotTold> groups) {
        return groups.stream()
                .map(group -> group.says() + ", by the definition " + Said.words(group.closure()) + ": "
                        + (group.fewerThan().isPresent()
                                ? "fewer than " + group.fewerThan().getAsInt() + " past cases"
                                : "not told, for it would tell the size of a smaller group"))
                .toList();
    }
}
