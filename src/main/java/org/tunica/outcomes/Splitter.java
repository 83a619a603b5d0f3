package org.tunica.outcomes;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.tunica.statistics.Funnel;
import org.tunica.statistics.FunnelGroup;

/** Splits one group into rows that share nobody and whose sum is told elsewhere. */
final class Splitter {
    static final String WITHOUT_YEAR = "year not recorded";

    private final OutcomeNumbers numbers;
    private final SmallGroups small;
    private final Tally tally;

    Splitter(OutcomeNumbers numbers) {
        this.numbers = numbers;
        this.small = new SmallGroups(numbers.k());
        this.tally = new Tally(numbers);
    }

    Split bySite(List<SegmentOutcome> group) {
        return by(SegmentOutcome::site, group);
    }

    Split byYear(List<SegmentOutcome> group) {
        return by(one -> one.year().isPresent() ? Integer.toString(one.year().getAsInt()) : WITHOUT_YEAR, group);
    }

    private Split by(Function<SegmentOutcome, String> name, List<SegmentOutcome> group) {
        Map<String, List<SegmentOutcome>> parts =
                group.stream().collect(Collectors.groupingBy(name, TreeMap::new, Collectors.toList()));
        List<List<ClosedAt>> columns = numbers.horizons().stream()
                .map(horizon -> column(List.copyOf(parts.values()), horizon))
                .toList();
        List<Split.Row> rows = new ArrayList<>();
        for (String part : parts.keySet()) {
            int place = rows.size();
            rows.add(new Split.Row(
                    part, columns.stream().map(column -> column.get(place)).toList()));
        }
        return new Split(rows, funnel(rows, group));
    }

    /** All rows at one horizon; what is hidden in one row must not follow from the others. */
    private List<ClosedAt> column(List<List<SegmentOutcome>> parts, Horizon horizon) {
        List<List<SegmentOutcome>> seen =
                parts.stream().map(part -> Tally.seenAt(part, horizon)).toList();
        List<Integer> people = seen.stream().map(SmallGroups::people).toList();
        Set<Integer> hidden = small.hiddenUnderKnownSum(people);
        List<ClosedAt> column = new ArrayList<>();
        for (int place = 0; place < parts.size(); place++) {
            column.add(new ClosedAt(
                    horizon,
                    hidden.contains(place)
                            ? small.few(people.get(place)) ? Counted.fewerThan(numbers.k()) : Counted.withheld()
                            : tally.closedTold(seen.get(place), horizon)));
        }
        return column;
    }

    private Optional<Funnel> funnel(List<Split.Row> rows, List<SegmentOutcome> group) {
        int year = numbers.horizons().indexOf(numbers.year());
        List<FunnelGroup> told = rows.stream()
                .filter(row -> row.closed().get(year).closed().share().isPresent())
                .map(row -> failures(row.name(), row.closed().get(year).closed()))
                .toList();
        List<SegmentOutcome> seen = Tally.seenAt(group, numbers.year());
        long failed = seen.stream()
                .filter(one -> !one.closedAt(numbers.year()).orElse(true))
                .count();
        return told.size() < 2 ? Optional.empty() : Optional.of(Funnel.against((double) failed / seen.size(), told));
    }

    private static FunnelGroup failures(String name, Counted closed) {
        int total = closed.total().orElseThrow();
        return new FunnelGroup(name, total - closed.events().orElseThrow(), total);
    }
}
