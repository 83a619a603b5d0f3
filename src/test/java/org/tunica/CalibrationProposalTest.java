package org.tunica;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.tunica.casefile.FaultyInput;
import org.tunica.heat.CalibrationReport;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.ChangeRecord;
import org.tunica.knowledge.ProposedChange;
import org.tunica.knowledge.Quantity;
import org.tunica.knowledge.Standing;

class CalibrationProposalTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final Path DEMO = Path.of("knowledge/demo/bench.csv");
    private static final String FILM = "heat.laser.film";
    private static final String DEVICES = "knowledge/heat-devices.yaml";

    private static final Map<List<String>, CalibrationReport> FITTED = new HashMap<>();

    /** Each fit once: it takes a second, and a report does not change. */
    private static CalibrationReport fit(String... free) throws IOException {
        byte[] bench = Files.readAllBytes(DEMO);
        return FITTED.computeIfAbsent(
                List.of(free), constants -> TUNICA.heat().calibrate("some/folder/bench.csv", bench, constants));
    }

    /** Put in place of the old entry and beside the other records, the draft loads and means what it says. */
    @Test
    void draft_isInTheFormTheReadersTake() throws IOException {
        ProposedChange proposed = TUNICA.heat().propose(fit(FILM));
        String[] documents = proposed.toYaml().split("\n---\n");
        assertEquals(2, documents.length);
        Map<String, String> texts = new TreeMap<>(Bundle.shipped().texts());
        texts.put(DEVICES, without(FILM, texts.get(DEVICES)) + "\n" + documents[0]);
        texts.put("rules/changes/0000-proposed.yaml", documents[1]);
        Tunica with = Tunica.of(Bundle.of(texts));
        assertEquals(proposed.quantities().get(0), with.knowledge().quantity(FILM));
        assertEquals(proposed.record(), with.knowledge().changes().get("0000"));
    }

    /** The texts of a file without one entry, which ends at an empty line. */
    private static String without(String id, String text) {
        int from = text.indexOf(id + ":");
        return text.substring(0, from) + text.substring(text.indexOf("\n\n", from) + 2);
    }

    @Test
    void draft_saysWhereItComesFrom() throws IOException {
        CalibrationReport report = fit(FILM);
        ProposedChange proposed = TUNICA.heat().propose(report);
        Quantity film = proposed.quantities().get(0);
        CalibrationReport.Spread spread = report.constants().get(0).spread().orElseThrow();
        assertEquals(ChangeRecord.Status.DRAFT, proposed.record().status());
        assertEquals(List.of(), proposed.record().approvers());
        assertEquals(Standing.LOCAL, film.provenance().standing());
        assertEquals(LocalDate.of(2026, 3, 1), film.provenance().since());
        assertTrue(TUNICA.knowledge().sources().containsKey(film.provenance().source()));
        assertEquals(spread.low95(), film.low().orElseThrow(), 1e-5);
        assertEquals(spread.high95(), film.high().orElseThrow(), 1e-5);
        assertTrue(film.provenance().note().orElseThrow().startsWith("was 0.3; range is the 95 percent interval"));
        assertTrue(proposed.record().reason().contains("58 depths of 29 rows of bench.csv."));
        assertTrue(proposed.record().reason().endsWith("A proposal for governance, not for use."));
    }

    @Test
    void doubtfulConstants_keepTheirRange() throws IOException {
        CalibrationReport report = fit(FILM);
        CalibrationReport.Fitted film = report.constants().get(0);
        CalibrationReport.Together pair =
                new CalibrationReport.Together(List.of(FILM, "heat.laser.efficiency"), OptionalDouble.of(0.97));
        Quantity proposed = TUNICA.heat()
                .propose(with(report, true, atEdge(film), List.of(pair)))
                .quantities()
                .get(0);
        Quantity old = TUNICA.knowledge().quantity(FILM);
        assertEquals(old.low(), proposed.low());
        assertEquals(old.high(), proposed.high());
        assertTrue(proposed.provenance()
                .note()
                .orElseThrow()
                .contains("range kept: not told apart from another constant, at the edge of its range;"));
    }

    @Test
    void restlessFit_proposesNothing() throws IOException {
        CalibrationReport report = fit(FILM);
        CalibrationReport restless = with(report, false, report.constants().get(0), report.notToldApart());
        assertTrue(assertThrows(FaultyInput.class, () -> TUNICA.heat().propose(restless))
                .getMessage()
                .contains("did not come to rest"));
    }

    @Test
    void constantNotFixed_proposesNothing() throws IOException {
        CalibrationReport report = fit(FILM, "heat.laser.efficiency");
        assertTrue(assertThrows(FaultyInput.class, () -> TUNICA.heat().propose(report))
                .getMessage()
                .contains("heat.laser.efficiency: is not fixed by these data"));
    }

    private static CalibrationReport.Fitted atEdge(CalibrationReport.Fitted fitted) {
        return new CalibrationReport.Fitted(
                fitted.id(), fitted.before(), fitted.low(), fitted.high(), fitted.value(), fitted.spread(), true);
    }

    private static CalibrationReport with(
            CalibrationReport report,
            boolean settled,
            CalibrationReport.Fitted constant,
            List<CalibrationReport.Together> notToldApart) {
        return new CalibrationReport(
                report.bench(),
                report.rows(),
                report.before(),
                report.after(),
                report.freedom(),
                report.condition(),
                settled,
                report.starts(),
                report.startsAgreeing(),
                List.of(constant),
                report.correlations(),
                notToldApart);
    }

    @Test
    void withoutDate_nothingIsProposed() throws IOException {
        byte[] dateless = Files.readString(DEMO).replace("# date:", "# day:").getBytes(StandardCharsets.UTF_8);
        CalibrationReport report = TUNICA.heat().calibrate("bench.csv", dateless, List.of(FILM));
        assertTrue(assertThrows(FaultyInput.class, () -> TUNICA.heat().propose(report))
                .getMessage()
                .contains("names no date"));
    }
}
