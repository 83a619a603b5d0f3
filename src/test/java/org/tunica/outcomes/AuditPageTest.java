package org.tunica.outcomes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tunica.outcomes.Past.closed;
import static org.tunica.outcomes.Past.open;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.tunica.paper.Block;
import org.tunica.paper.Document;
import org.tunica.paper.Paper;
import org.tunica.pastcases.PastCase;
import org.tunica.picture.OutcomePicture;
import org.tunica.plan.Advice;

/** The page of an audit of a base made by hand: thirty lasers, one period bad, and three adhesives, too few to tell of. */
class AuditPageTest {
    private static final Advice.Release RELEASE = new Advice.Release("test", Advice.Release.State.DRAFT, "none");
    private static final Auditor AUDITOR = new Auditor(Past.KNOWLEDGE, 1);
    private static Audit audit;
    private static String html;

    @BeforeAll
    static void auditOnce() {
        List<PastCase> base = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            String year = i < 20 ? "\"year\":2021," : "\"year\":2023,";
            base.add(Past.number(i)
                    .with("YEAR", year)
                    .with("SITE", i % 2 == 0 ? "site-a" : "site-b")
                    .seen(closed(7), i < 20 ? closed(365) : open(365)));
        }
        for (int i = 30; i < 33; i++) {
            base.add(Past.number(i).technique("adhesive").seen(closed(7), open(365)));
        }
        audit = AUDITOR.audit(base::forEach, AuditQuestion.ALL);
        html = Paper.xhtml(AUDITOR.page(audit, RELEASE));
    }

    @Test
    void saysThatItIsInvented_onEveryPage() {
        Document page = AUDITOR.page(audit, RELEASE);
        assertEquals("INVENTED", page.mark());
        assertEquals(List.of(Advice.CAUTION, Cautions.INVENTED), page.cautions());
    }

    @Test
    void theFewAreNamedAndNotCounted() {
        assertTrue(html.contains(
                "cyanoacrylate adhesive, by the definition adhesive open stump: fewer than 5 past cases"));
        assertTrue(html.contains("not told, for it would tell the size of a small group"));
        assertEquals(OptionalInt.empty(), audit.segments(), "33 less 30 would tell them");
        assertFalse(html.contains("of 33") || html.contains(">33<"));
    }

    @Test
    void theBadYearIsTold_inWordsAndTables() {
        assertTrue(html.contains("Worse than foretold: the chart spoke at segment"));
        assertTrue(html.contains("treated in 2023. Look at these cases."));
        assertTrue(html.contains("more failures (95 %)") || html.contains("FAR MORE failures (99.8 %)"));
    }

    @Test
    void whereEveryGroupIsSmall_theyAreNamedOnALine() {
        List<PastCase> few = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            few.add(Past.number(i)
                    .with("YEAR", "\"year\":" + (2015 + i) + ",")
                    .with("SITE", "site-s" + i)
                    .seen(closed(7), closed(365)));
        }
        String page = Paper.xhtml(AUDITOR.text(AUDITOR.audit(few::forEach, AuditQuestion.ALL)));
        assertTrue(page.contains("Too few to tell of, each for itself: 2015, 2016, 2017, 2018, 2019, 2020."), page);
        assertTrue(page.contains("Too few to tell of, each for itself: site-s0, site-s1,"), page);
        assertFalse(page.contains("treated in") || page.contains("against all together"), page);
    }

    @Test
    void holdsFourCharts_ofShapesAndTextAlone() {
        assertEquals(4, html.split("<svg", -1).length - 1);
        assertFalse(html.contains("clip-path") || html.contains("url("));
        assertTrue(new String(Paper.pdf(AUDITOR.page(audit, RELEASE)), StandardCharsets.ISO_8859_1).startsWith("%PDF"));
        assertTrue(AUDITOR.text(audit).sections().stream()
                .flatMap(section -> section.blocks().stream())
                .noneMatch(Block.Drawing.class::isInstance));
    }

    @Test
    void chartsForThemselves_sayThatTheyAreInvented() {
        Map<String, OutcomePicture> charts = AUDITOR.charts(audit, RELEASE, 500);
        assertEquals(
                List.of(
                        "laser-1470-radial-adhesive-open-stump-curve",
                        "laser-1470-radial-adhesive-open-stump-chart",
                        "laser-1470-radial-adhesive-open-stump-years",
                        "laser-1470-radial-adhesive-open-stump-sites"),
                List.copyOf(charts.keySet()));
        charts.values().forEach(chart -> {
            String svg = new String(chart.svg(), StandardCharsets.UTF_8);
            assertTrue(svg.contains("INVENTED"));
        });
    }

    @Test
    void noPastCaseIsNamed() {
        assertFalse(html.contains("p-0000"));
    }
}
