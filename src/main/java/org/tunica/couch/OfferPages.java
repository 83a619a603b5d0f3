package org.tunica.couch;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.Authentication;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.Tunica;
import org.tunica.archive.PastCaseDesk;
import org.tunica.archive.RandomIds;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.frame.ForPeople;
import org.tunica.frame.OpenCases;
import org.tunica.frame.Pages;
import org.tunica.frame.Reader;
import org.tunica.pastcases.Finished;
import org.tunica.store.KeptCase;
import org.tunica.store.Store;

/** Where a specialist lets a finished case lose its person and wait to be looked at. */
@RestController
@ForPeople
final class OfferPages {
    private static final String AT = "/cases/{caseRef}/past";

    private final Pages pages;
    private final Store store;
    private final OpenCases cases;
    private final CaseWork work;
    private final PastCaseDesk desk;
    private final RandomIds ids = new RandomIds();

    OfferPages(Pages pages, Tunica tunica, Store store, OpenCases cases, PastCaseDesk desk) {
        this.pages = pages;
        this.store = store;
        this.cases = cases;
        this.work = new CaseWork(tunica, store);
        this.desk = desk;
    }

    /** What will be told of the case, and what nobody but the specialist can say. */
    @GetMapping(path = AT, produces = Pages.HTML)
    String form(@PathVariable String caseRef, HttpServletRequest request, Authentication who) {
        KeptCase kept = cases.looked(caseRef, who);
        return page(kept, new OfferPage.Typed(desk.site().orElse(""), "", ""), List.of(), request);
    }

    /** Lets it wait; what cannot wait comes back with every reason. */
    @PostMapping(path = AT, produces = Pages.HTML)
    ResponseEntity<String> offer(
            @PathVariable String caseRef,
            @RequestParam(defaultValue = "") String site,
            @RequestParam(defaultValue = "") String year,
            @RequestParam(defaultValue = "") String note,
            HttpServletRequest request,
            Authentication who) {
        KeptCase kept = cases.latest(caseRef);
        OfferPage.Typed typed = new OfferPage.Typed(site.strip(), year.strip(), note.strip());
        try {
            CaseWork.Offered offered = work.offered(
                            caseRef,
                            (caseFile, delivered, followUp) -> new Finished(
                                    caseFile,
                                    delivered,
                                    followUp,
                                    yearOf(typed),
                                    typed.site(),
                                    DemoCases.invented(store.cases(), kept),
                                    typed.note().isEmpty() ? List.of() : List.of(typed.note())))
                    .orElseThrow(() -> new FaultyInput("finished case", List.of(unfinished())));
            String id = desk.offer(Reader.of(who).actor(), offered.finished(), offered.planned(), ids)
                    .id();
            return ResponseEntity.status(HttpStatus.SEE_OTHER)
                    .header("Location", "/past/look?id=" + id)
                    .build();
        } catch (FaultyInput e) {
            return ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT)
                    .body(page(
                            kept,
                            typed,
                            e.faults().stream().map(Fault::toString).toList(),
                            request));
        }
    }

    private static Fault unfinished() {
        return new Fault("case", "a record of what was delivered and a visit afterwards must be kept first");
    }

    private static OptionalInt yearOf(OfferPage.Typed typed) {
        if (typed.year().isEmpty()) {
            return OptionalInt.empty();
        }
        if (!typed.year().matches("(19|20)[0-9]{2}")) {
            throw new FaultyInput(
                    "finished case", List.of(new Fault("year", "must be a year such as 2026, or left empty")));
        }
        return OptionalInt.of(Integer.parseInt(typed.year()));
    }

    private String page(KeptCase kept, OfferPage.Typed typed, List<String> faults, HttpServletRequest request) {
        Optional<CaseWork.Offered> offered = work.offered(
                kept.caseRef(),
                (caseFile, delivered, followUp) ->
                        new Finished(caseFile, delivered, followUp, OptionalInt.empty(), "", true, List.of()));
        return pages.written(
                "offer.jte",
                new OfferPage(
                        pages.frame("Case " + kept.caseRef() + " as a past case", request),
                        kept.caseRef(),
                        offered.isPresent(),
                        DemoCases.invented(store.cases(), kept),
                        typed,
                        faults));
    }
}
