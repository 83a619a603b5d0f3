package org.tunica;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.casefile.Faults;
import org.tunica.heat.BenchFile;
import org.tunica.heat.CalibrationReport;
import org.tunica.knowledge.ChangeRecord;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.ProposedChange;
import org.tunica.knowledge.Provenance;
import org.tunica.knowledge.Quantity;
import org.tunica.knowledge.Standing;

/**
 * Drafts a change of knowledge from a fit. The new range of a constant is its 95 % interval inside the old range; one that
 * is not told apart from another or stands at its edge keeps its old range, and its note says why. With a constant the data
 * do not fix nothing is proposed: it would be moved on no evidence, and the others with it.
 */
final class CalibrationProposal {
    /** "Definition of this project", a source that exists, until the laboratory names its own. */
    private static final String PLACEHOLDER_SOURCE = "S-0901";

    private static final String NOT_NUMBERED = "0000";
    private static final MathContext DIGITS = new MathContext(5);

    private final Knowledge knowledge;
    private final CalibrationReport report;
    private final LocalDate date;

    /**
     * A draft of a report.
     *
     * @throws org.tunica.casefile.FaultyInput when the bench file names no date, the fit did not come to rest or a constant
     *     is not fixed by the data
     */
    CalibrationProposal(Knowledge knowledge, CalibrationReport report) {
        this.knowledge = knowledge;
        this.report = report;
        BenchFile bench = report.bench();
        Faults faults = new Faults();
        if (bench.date().isEmpty()) {
            faults.add("file", "names no date; write a line such as \"# date: 2026-01-31\" above the header");
        }
        if (!report.settled()) {
            faults.add("fit", "did not come to rest, so nothing is proposed");
        }
        report.constants().stream()
                .filter(CalibrationReport.Fitted::tellsLittle)
                .forEach(fitted -> faults.add(
                        fitted.id(), "is not fixed by these data; leave it out of the free constants and fit again"));
        faults.throwIfAny(bench.name());
        this.date = bench.date().orElseThrow();
    }

    ProposedChange change() {
        List<String> ids = report.constants().stream()
                .map(CalibrationReport.Fitted::id)
                .sorted()
                .toList();
        ChangeRecord record = new ChangeRecord(
                NOT_NUMBERED,
                "constants of the heat model fitted to bench measurements",
                ChangeRecord.Status.DRAFT,
                List.of(new ChangeRecord.Person("to be named", "XX")),
                List.of(),
                List.of(),
                reason(),
                List.of(PLACEHOLDER_SOURCE),
                List.of(),
                ids,
                date,
                List.of(),
                List.of());
        return new ProposedChange(
                record, report.constants().stream().map(this::quantity).toList());
    }

    private String reason() {
        BenchFile bench = report.bench();
        return String.format(
                Locale.ROOT,
                "Fitted by least squares to %d depths of %d rows of %s. Computed depths are off by %.3f mm (root mean"
                        + " square) instead of %.3f mm. A proposal for governance, not for use.",
                bench.depths(),
                bench.rows().size(),
                fileName(bench.name()),
                report.after().rmsMm(),
                report.before().rmsMm());
    }

    private Quantity quantity(CalibrationReport.Fitted fitted) {
        Quantity old = knowledge.quantity(fitted.id());
        List<String> doubts = doubts(fitted);
        return new Quantity(
                fitted.id(),
                old.says(),
                rounded(fitted.value()),
                OptionalDouble.of(doubts.isEmpty() ? rounded(low95(fitted)) : fitted.low()),
                OptionalDouble.of(doubts.isEmpty() ? rounded(high95(fitted)) : fitted.high()),
                old.unit(),
                new Provenance(
                        PLACEHOLDER_SOURCE, Standing.LOCAL, date, NOT_NUMBERED, Optional.of(note(fitted, doubts))));
    }

    private static double low95(CalibrationReport.Fitted fitted) {
        return Math.max(fitted.low(), fitted.spread().orElseThrow().low95());
    }

    private static double high95(CalibrationReport.Fitted fitted) {
        return Math.min(fitted.high(), fitted.spread().orElseThrow().high95());
    }

    private List<String> doubts(CalibrationReport.Fitted fitted) {
        List<String> doubts = new ArrayList<>();
        if (report.notToldApart(fitted.id())) {
            doubts.add("not told apart from another constant");
        }
        if (fitted.atEdge()) {
            doubts.add("at the edge of its range");
        }
        return doubts;
    }

    private static String note(CalibrationReport.Fitted fitted, List<String> doubts) {
        String was = "was " + fitted.before() + "; ";
        return was
                + (doubts.isEmpty()
                        ? "range is the 95 percent interval of the fit"
                        : "range kept: " + String.join(", ", doubts))
                + "; the source stands in for the report of the laboratory";
    }

    /** Rounding keeps the order of value and range. */
    private static double rounded(double value) {
        return new BigDecimal(value).round(DIGITS).doubleValue();
    }

    /** Without its folders: where a laboratory keeps its files is nobody's business. */
    private static String fileName(String path) {
        return path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
    }
}
