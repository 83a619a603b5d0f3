package org.tunica.outcomes;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tunica.paper.Block;
import org.tunica.picture.ChartHead;
import org.tunica.picture.ChartWords;
import org.tunica.picture.OutcomePicture;
import org.tunica.picture.SurvivalChart;
import org.tunica.plan.Advice;
import org.tunica.treatment.ClosureDefinition;

/** How long past segments stayed closed, as curves: one chart for each definition of closure, for those cannot be compared. */
public final class HappenedCurves {
    private static final int PAGE_WIDTH_PX = 670;

    private final OutcomeNumbers numbers;
    private final Advice.Release release;

    /** With the numbers of a release. */
    public HappenedCurves(OutcomeNumbers numbers, Advice.Release release) {
        this.numbers = numbers;
        this.release = release;
    }

    /**
     * The charts with their key and their figures in words.
     *
     * @param whom of whom it tells, such as "the past segments most like L1"
     */
    public List<Block> blocks(String whom, WhatHappened happened) {
        Map<ClosureDefinition, List<SurvivalChart.Group>> groups = new EnumMap<>(ClosureDefinition.class);
        happened.techniques()
                .forEach(one -> one.staying()
                        .ifPresent(staying -> groups.computeIfAbsent(one.closure(), closure -> new ArrayList<>())
                                .add(new SurvivalChart.Group(one.says(), staying.curve()))));
        List<Block> blocks = new ArrayList<>();
        groups.forEach((closure, all) -> blocks.addAll(chart(whom, happened, closure, all)));
        return blocks;
    }

    private List<Block> chart(
            String whom, WhatHappened happened, ClosureDefinition closure, List<SurvivalChart.Group> all) {
        List<String> notes = new ArrayList<>(List.of(Cautions.CURVE, Cautions.FOLLOWED, Cautions.NOT_BY_LOT));
        if (happened.invented()) {
            notes.add(0, Cautions.INVENTED);
        }
        String title = (happened.invented() ? "INVENTED cases. " : "") + "How long " + whom
                + " stayed closed, by the definition " + Said.words(closure);
        SurvivalChart chart = new SurvivalChart(
                new ChartHead(title, "", notes, release),
                "closed",
                all.subList(0, Math.min(all.size(), SurvivalChart.MOST_GROUPS)),
                numbers.horizons().stream().map(Horizon::daysAfter).toList(),
                Optional.empty());
        ChartWords words = chart.words();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(title));
        blocks.add(new Block.Drawing(
                OutcomePicture.of(chart, PAGE_WIDTH_PX).chartAlone(), title + "; the table beneath reads the curves."));
        blocks.add(new Block.Paragraph(words.caption()));
        blocks.add(new Block.Table(words.header(), words.rows()));
        return blocks;
    }
}
