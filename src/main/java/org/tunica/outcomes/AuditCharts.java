package org.tunica.outcomes;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tunica.paper.Block;
import org.tunica.picture.ChartHead;
import org.tunica.picture.CusumChart;
import org.tunica.picture.FunnelChart;
import org.tunica.picture.OutcomePicture;
import org.tunica.picture.SurvivalChart;
import org.tunica.plan.Advice;
import org.tunica.statistics.Funnel;

/** The charts of an audit, for a page or each for itself. */
final class AuditCharts implements AuditDrawings {
    private static final int PAGE_WIDTH_PX = 670;
    private static final String FAILURE = "not closed at the scan about one year after treatment";

    private final OutcomeNumbers numbers;
    private final Advice.Release release;
    private final Audit audit;

    AuditCharts(OutcomeNumbers numbers, Advice.Release release, Audit audit) {
        this.numbers = numbers;
        this.release = release;
        this.audit = audit;
    }

    /** Every chart by a name for its file, with its heading, table and notes. */
    Map<String, OutcomePicture> all(int widthPx) {
        Map<String, OutcomePicture> all = new LinkedHashMap<>();
        for (AuditedTechnique one : audit.techniques()) {
            String name =
                    one.outcome().technique() + "-" + one.outcome().closure().word();
            survival(one).ifPresent(chart -> all.put(name + "-curve", OutcomePicture.of(chart, widthPx)));
            cusum(one).ifPresent(chart -> all.put(name + "-chart", OutcomePicture.of(chart, widthPx)));
            byYear(one).ifPresent(chart -> all.put(name + "-years", OutcomePicture.of(chart, widthPx)));
            bySite(one).ifPresent(chart -> all.put(name + "-sites", OutcomePicture.of(chart, widthPx)));
        }
        return all;
    }

    @Override
    public Optional<Block> curve(AuditedTechnique audited) {
        return survival(audited)
                .map(chart -> drawing(
                        OutcomePicture.of(chart, PAGE_WIDTH_PX), "Curve of staying closed; the table above reads it."));
    }

    @Override
    public Optional<Block> chart(AuditedTechnique audited) {
        return cusum(audited)
                .map(chart -> drawing(
                        OutcomePicture.of(chart, PAGE_WIDTH_PX),
                        "Results against published rates, segment by segment; the words above tell its signals."));
    }

    @Override
    public Optional<Block> years(AuditedTechnique audited) {
        return byYear(audited)
                .map(chart -> drawing(
                        OutcomePicture.of(chart, PAGE_WIDTH_PX), "Failures by year; the table above tells them."));
    }

    @Override
    public Optional<Block> sites(AuditedTechnique audited) {
        return bySite(audited)
                .map(chart -> drawing(
                        OutcomePicture.of(chart, PAGE_WIDTH_PX), "Failures by site; the table above tells them."));
    }

    private static Block drawing(OutcomePicture picture, String says) {
        return new Block.Drawing(picture.chartAlone(), says);
    }

    private Optional<SurvivalChart> survival(AuditedTechnique one) {
        return one.outcome()
                .staying()
                .map(staying -> new SurvivalChart(
                        head("How long treated veins stayed closed", one, List.of(Cautions.CURVE, Cautions.FOLLOWED)),
                        "closed",
                        List.of(new SurvivalChart.Group(one.outcome().says(), staying.curve())),
                        numbers.horizons().stream().map(Horizon::daysAfter).toList(),
                        Optional.empty()));
    }

    private Optional<CusumChart> cusum(AuditedTechnique one) {
        return one.watch()
                .map(watch -> new CusumChart(
                        head("Results against published rates", one, List.of(Cautions.ORDER, Cautions.WATCHED)),
                        FAILURE,
                        watch.chart()));
    }

    private Optional<FunnelChart> byYear(AuditedTechnique one) {
        return funnel("Failures by year of treatment", one, one.byYear().funnel(), FunnelChart.Kind.PERIODS);
    }

    private Optional<FunnelChart> bySite(AuditedTechnique one) {
        return funnel("Failures by site", one, one.bySite().funnel(), FunnelChart.Kind.GROUPS);
    }

    private Optional<FunnelChart> funnel(
            String title, AuditedTechnique one, Optional<Funnel> funnel, FunnelChart.Kind kind) {
        return funnel.map(
                found -> new FunnelChart(head(title, one, List.of(Cautions.NOT_BY_LOT)), FAILURE, kind, found));
    }

    private ChartHead head(String title, AuditedTechnique one, List<String> notes) {
        List<String> all = new ArrayList<>(notes);
        if (audit.invented()) {
            all.add(0, Cautions.INVENTED);
        }
        String invented = audit.invented() ? "INVENTED cases. " : "";
        return new ChartHead(
                title,
                invented + OutcomeBlocks.heading(one.outcome()) + "; " + AuditPage.asked(audit.asked()),
                all,
                release);
    }
}
