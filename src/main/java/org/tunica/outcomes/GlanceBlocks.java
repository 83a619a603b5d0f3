package org.tunica.outcomes;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.tunica.paper.Block;
import org.tunica.statistics.CusumSide;
import org.tunica.treatment.ClosureDefinition;

/** All techniques at one year, a table for each definition of closure. */
final class GlanceBlocks {
    private final OutcomeNumbers numbers;

    GlanceBlocks(OutcomeNumbers numbers) {
        this.numbers = numbers;
    }

    List<Block> of(Audit audit) {
        Map<ClosureDefinition, List<List<String>>> tables = new TreeMap<>();
        for (AuditedTechnique one : audit.techniques()) {
            tables.computeIfAbsent(one.outcome().closure(), definition -> new ArrayList<>())
                    .add(row(one));
        }
        List<Block> blocks = new ArrayList<>();
        tables.forEach((definition, rows) -> {
            blocks.add(new Block.Heading("Closed by the definition " + Said.words(definition)));
            blocks.add(new Block.Table(
                    List.of(
                            "closed",
                            "share",
                            Said.limitsOf(numbers.confidenceShare()),
                            "failed, foretold",
                            "chart",
                            "technique"),
                    rows));
        });
        blocks.add(new Block.Paragraph(
                "Failed, foretold: not closed at one year among those on the chart, and how many published"
                        + " rates led to expect. Chart: whether it spoke."));
        return blocks;
    }

    private List<String> row(AuditedTechnique one) {
        Counted closed = one.outcome()
                .closed()
                .get(numbers.horizons().indexOf(numbers.year()))
                .closed();
        return List.of(
                Said.counted(closed),
                Said.share(closed),
                Said.limits(closed),
                one.watch().map(GlanceBlocks::foretold).orElse("no rate"),
                spoke(one.watch()),
                one.outcome().says());
    }

    private static String foretold(Watch watch) {
        return watch.failed() + ", " + Said.tenths(watch.predictedFailures()) + " of "
                + watch.chart().points().size();
    }

    private static String spoke(Optional<Watch> watch) {
        if (watch.isEmpty()) {
            return "none";
        }
        if (spoke(watch.get(), CusumSide.WORSE)) {
            return "WORSE";
        }
        return spoke(watch.get(), CusumSide.BETTER) ? "better" : "quiet";
    }

    private static boolean spoke(Watch watch, CusumSide side) {
        return watch.signals().stream().anyMatch(signal -> signal.side() == side);
    }
}
