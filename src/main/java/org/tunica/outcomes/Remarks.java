package org.tunica.outcomes;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What is left out of the figures of one technique, and why. */
final class Remarks {
    private final OutcomeNumbers numbers;
    private final PublishedRisk risk;
    private final SmallGroups small;

    Remarks(OutcomeNumbers numbers, PublishedRisk risk) {
        this.numbers = numbers;
        this.risk = risk;
        this.small = new SmallGroups(numbers.k());
    }

    List<String> of(List<SegmentOutcome> group, boolean watched) {
        List<String> remarks = new ArrayList<>();
        if (!watched) {
            remarks.add(
                    "Not watched against published rates: too few segments have a scan at one year, a year of treatment"
                            + " and a published rate for their vein.");
        }
        withoutRate(group, remarks);
        unseen(group, remarks);
        withoutYear(group, remarks);
        return remarks;
    }

    private void withoutRate(List<SegmentOutcome> group, List<String> remarks) {
        Set<String> veins = risk.veinsWithout(group);
        if (!veins.isEmpty()) {
            List<SegmentOutcome> without =
                    group.stream().filter(one -> risk.of(one).isEmpty()).toList();
            remarks.add("No published rate at one year is known for this technique in: "
                    + String.join(", ", veins).replace('-', ' ') + " (" + count(without, group)
                    + "). These are counted above and not watched.");
        }
    }

    /** Failures known early count in the curve; the chart and the shares at one year know only those who came. */
    private void unseen(List<SegmentOutcome> group, List<String> remarks) {
        List<SegmentOutcome> unseen = group.stream()
                .filter(one -> one.closedAt(numbers.year()).isEmpty())
                .toList();
        List<SegmentOutcome> failed = unseen.stream()
                .filter(one -> one.staying().filter(Staying::failed).isPresent())
                .toList();
        if (!unseen.isEmpty()) {
            remarks.add("Without a scan at one year (day " + numbers.year().fromDaysAfter() + " to "
                    + numbers.year().toDaysAfter() + "): " + count(unseen, group)
                    + "; of these were seen open or treated again at another time: " + count(failed, unseen)
                    + ". They count in the curve alone.");
        }
    }

    private void withoutYear(List<SegmentOutcome> group, List<String> remarks) {
        List<SegmentOutcome> without =
                group.stream().filter(one -> one.year().isEmpty()).toList();
        if (!without.isEmpty()) {
            remarks.add("Without a year of treatment: " + count(without, group) + ". They are not watched.");
        }
    }

    private String count(List<SegmentOutcome> some, List<SegmentOutcome> all) {
        return small.few(SmallGroups.people(some))
                ? "fewer than " + small.k() + " of " + all.size()
                : some.size() + " of " + all.size();
    }
}
