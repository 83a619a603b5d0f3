package org.tunica.outcomes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tunica.paper.Block;
import org.tunica.statistics.Funnel;
import org.tunica.statistics.FunnelPlace;

/** One technique year by year and site by site, as parts of a page. */
final class SplitBlocks {
    private static final String NONE = "None seen.";

    private final OutcomeNumbers numbers;

    SplitBlocks(OutcomeNumbers numbers) {
        this.numbers = numbers;
    }

    /** At one year alone. */
    List<Block> years(Split split) {
        int year = numbers.horizons().indexOf(numbers.year());
        List<List<String>> rows = split.rows().stream()
                .map(row -> row(row.name(), row.closed().get(year), place(split.funnel(), row.name())))
                .toList();
        boolean told = split.rows().stream().anyMatch(row -> told(row.closed().get(year)));
        return told
                ? table("Closed at one year, by year of treatment", "treated in", rows, split.funnel())
                : tooFew("Closed at one year, by year of treatment", split);
    }

    /** At each horizon at which anybody was seen. */
    List<Block> sites(Split split) {
        List<List<String>> rows = new ArrayList<>();
        for (Split.Row row : split.rows()) {
            String name = row.name();
            for (ClosedAt at : row.closed()) {
                boolean nobody = at.closed().total().orElse(1) == 0;
                if (!nobody) {
                    boolean judged = at.horizon().equals(numbers.year());
                    rows.add(row(name, at, judged ? place(split.funnel(), row.name()) : ""));
                    name = "";
                }
            }
        }
        boolean told =
                split.rows().stream().flatMap(row -> row.closed().stream()).anyMatch(SplitBlocks::told);
        return told ? table("Closed by site", "site", rows, split.funnel()) : tooFew("Closed by site", split);
    }

    private static boolean told(ClosedAt at) {
        return at.closed().lowShare().isPresent();
    }

    /** A table of nothing but small groups is read by nobody. */
    private static List<Block> tooFew(String heading, Split split) {
        String names = split.rows().stream().map(Split.Row::name).collect(Collectors.joining(", "));
        return List.of(
                new Block.Heading(heading),
                new Block.Paragraph(names.isEmpty() ? NONE : "Too few to tell of, each for itself: " + names + "."));
    }

    private static List<String> row(String name, ClosedAt at, String place) {
        return List.of(
                name,
                Integer.toString(at.horizon().daysAfter()),
                Said.counted(at.closed()),
                Said.share(at.closed()),
                Said.limits(at.closed()),
                place);
    }

    private List<Block> table(String heading, String of, List<List<String>> rows, Optional<Funnel> funnel) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(heading));
        if (rows.isEmpty()) {
            blocks.add(new Block.Paragraph(NONE));
            return blocks;
        }
        blocks.add(new Block.Table(
                List.of(of, "day", "closed", "share", Said.limitsOf(numbers.confidenceShare()), "against all together"),
                rows));
        funnel.ifPresent(found -> blocks.add(new Block.Paragraph("Held against "
                + Said.percent(found.targetShare())
                + " not closed at one year over all of these together; binomial limits of 95 % and 99.8 %.")));
        return blocks;
    }

    private static String place(Optional<Funnel> funnel, String name) {
        return funnel.stream()
                .flatMap(found -> found.points().stream())
                .filter(point -> point.group().name().equals(name))
                .map(point -> says(point.place()))
                .findFirst()
                .orElse("");
    }

    private static String says(FunnelPlace place) {
        return switch (place) {
            case BELOW_OUTER -> "far fewer failures (99.8 %)";
            case BELOW_INNER -> "fewer failures (95 %)";
            case WITHIN -> "within the limits";
            case ABOVE_INNER -> "more failures (95 %)";
            case ABOVE_OUTER -> "FAR MORE failures (99.8 %)";
        };
    }
}
