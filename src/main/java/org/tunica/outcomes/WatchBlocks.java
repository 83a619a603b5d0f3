package org.tunica.outcomes;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tunica.paper.Block;
import org.tunica.statistics.CusumSide;

/** Results against published rates as parts of a page. */
final class WatchBlocks {
    private final OutcomeNumbers numbers;

    WatchBlocks(OutcomeNumbers numbers) {
        this.numbers = numbers;
    }

    List<Block> of(AuditedTechnique audited) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading("Against published rates, case by case"));
        audited.watch().ifPresent(watch -> blocks.addAll(watched(watch)));
        if (!audited.remarks().isEmpty()) {
            blocks.add(new Block.Points(audited.remarks()));
        }
        return blocks;
    }

    private List<Block> watched(Watch watch) {
        int cases = watch.chart().points().size();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph("Not closed at one year: " + watch.failed() + " of " + cases
                + "; published rates led to expect " + Said.tenths(watch.predictedFailures()) + " (mean of "
                + watch.rates().size() + " rates, " + String.join(", ", watch.sources())
                + "; adjusted for technique and vein only)."));
        List<Watch.Signal> signals = watch.signals();
        if (signals.isEmpty()) {
            blocks.add(
                    new Block.Paragraph("The chart did not speak: neither worse nor better than the rates foretell."));
        } else {
            signals.forEach(signal -> blocks.add(signal(signal)));
        }
        blocks.add(new Block.Paragraph(limits(watch, cases)));
        return blocks;
    }

    private static Block signal(Watch.Signal signal) {
        String says =
                (signal.side() == CusumSide.WORSE ? "Worse" : "Better") + " than foretold: the chart spoke at segment "
                        + signal.caseNumber() + ", treated in " + signal.year()
                        + ". The change most likely began about segment "
                        + signal.sinceCaseNumber() + ", treated in " + signal.sinceYear() + ".";
        return signal.side() == CusumSide.WORSE
                ? new Block.Warning(says + " Look at these cases.")
                : new Block.Paragraph(says);
    }

    private String limits(Watch watch, int cases) {
        return String.format(
                Locale.ROOT,
                "Risk-adjusted CUSUM, odds of failure times %s (limit %.2f) and times %s (limit %.2f). Each limit was found by"
                        + " simulation: of charts with %d such segments and results as foretold, no more than %s reach it (%s and"
                        + " %s did). Order: by year, within a year as in the base.",
                Said.number(numbers.worseOddsRatio()),
                watch.worse().limit(),
                Said.number(numbers.betterOddsRatio()),
                watch.better().limit(),
                cases,
                Said.percent(numbers.falseAlarmShare()),
                Said.percent(watch.worse().reached().value()),
                Said.percent(watch.better().reached().value()));
    }
}
