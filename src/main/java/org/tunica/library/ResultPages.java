package org.tunica.library;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.frame.ForPeople;
import org.tunica.frame.Pages;
import org.tunica.outcomes.Audit;
import org.tunica.outcomes.AuditQuestion;
import org.tunica.outcomes.Split;
import org.tunica.paper.Document;

/** What came of past cases: all techniques at a glance, or one of them with its charts. */
@RestController
@ForPeople
final class ResultPages {
    private static final String AT = "/results";

    private final Pages pages;
    private final Tunica tunica;
    private final Results results;

    ResultPages(Pages pages, Tunica tunica, Results results) {
        this.pages = pages;
        this.tunica = tunica;
        this.results = results;
    }

    /** What was asked for, whatever of it. */
    @ModelAttribute
    ResultsPage.Typed typed(
            @RequestParam(defaultValue = "") String site,
            @RequestParam(defaultValue = "") String technique,
            @RequestParam(defaultValue = "") String against,
            @RequestParam(defaultValue = "") String from,
            @RequestParam(defaultValue = "") String to,
            @RequestParam(defaultValue = "") String invented) {
        return new ResultsPage.Typed(
                site.strip(), technique.strip(), against.strip(), from.strip(), to.strip(), invented.equals("yes"));
    }

    @GetMapping(path = AT, produces = Pages.HTML)
    ResponseEntity<String> results(@ModelAttribute ResultsPage.Typed typed, HttpServletRequest request) {
        if (!results.any() && !typed.invented()) {
            return ResponseEntity.ok(page(typed, List.of(), List.of(), Optional.empty(), List.of(), request));
        }
        List<String> sites = sites(typed.invented());
        try {
            Results.Found found = results.of(AskedResults.question(typed), typed.invented());
            return ResponseEntity.ok(
                    page(typed, sites, List.of(), Optional.of(document(found.audit())), found.leftOut(), request));
        } catch (FaultyInput e) {
            List<String> faults = e.faults().stream().map(Fault::toString).toList();
            return ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT)
                    .body(page(typed, sites, faults, Optional.empty(), List.of(), request));
        }
    }

    /** The same as PDF. */
    @GetMapping(path = AT + "/pdf", produces = MediaType.APPLICATION_PDF_VALUE)
    byte[] pdf(@ModelAttribute ResultsPage.Typed typed) {
        return tunica.toPdf(document(
                results.of(AskedResults.question(typed), typed.invented()).audit()));
    }

    /** Charts of every technique at once are more than anybody looks at. */
    private Document document(Audit audit) {
        boolean one = audit.asked().technique().isPresent()
                || !audit.asked().compare().isEmpty();
        return one ? tunica.audits().page(audit) : tunica.audits().glance(audit);
    }

    /** The sites that stand in the results of all of them, where small ones do not. */
    private List<String> sites(boolean invented) {
        return results.of(AuditQuestion.ALL, invented).audit().techniques().stream()
                .flatMap(one -> one.bySite().rows().stream())
                .map(Split.Row::name)
                .distinct()
                .sorted()
                .toList();
    }

    private String page(
            ResultsPage.Typed typed,
            List<String> sites,
            List<String> faults,
            Optional<Document> document,
            List<String> leftOut,
            HttpServletRequest request) {
        List<ResultsPage.Technique> techniques = tunica.knowledge().techniqueIds().stream()
                .map(id -> new ResultsPage.Technique(
                        id, tunica.knowledge().technique(id).says()))
                .toList();
        return pages.written(
                "results.jte",
                new ResultsPage(
                        pages.frame("Results of past cases", request),
                        typed,
                        techniques,
                        sites,
                        faults,
                        document,
                        AT + "/pdf" + AskedResults.query(typed),
                        String.join(", ", leftOut)));
    }
}
