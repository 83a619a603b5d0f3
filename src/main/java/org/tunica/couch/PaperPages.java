package org.tunica.couch;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.springframework.http.MediaType;
import org.springframework.security.core.Authentication;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.Tunica;
import org.tunica.frame.ForPeople;
import org.tunica.frame.OpenCases;
import org.tunica.frame.Pages;
import org.tunica.frame.Reader;
import org.tunica.pages.CourseView;
import org.tunica.store.DocumentKind;
import org.tunica.store.KeptDocument;
import org.tunica.store.Role;
import org.tunica.store.Store;

/** What is kept with a case, and what can be printed of it. */
@RestController
@ForPeople
final class PaperPages {
    private final Pages pages;
    private final Tunica tunica;
    private final Store store;
    private final OpenCases cases;
    private final CaseWork work;

    PaperPages(Pages pages, Tunica tunica, Store store, OpenCases cases) {
        this.pages = pages;
        this.tunica = tunica;
        this.store = store;
        this.cases = cases;
        this.work = new CaseWork(tunica, store);
    }

    /** Everything that is kept, and where more can be recorded. */
    @GetMapping(path = "/cases/{caseRef}/papers", produces = Pages.HTML)
    String papers(@PathVariable String caseRef, HttpServletRequest request, Authentication who) {
        cases.looked(caseRef, who);
        List<KeptDocument> plans = store.documents().of(caseRef, DocumentKind.PLAN);
        boolean may = Reader.of(who).is(Role.SPECIALIST) && !plans.isEmpty();
        return pages.written(
                "papers.jte",
                new PapersPage(
                        pages.frame("Papers of case " + caseRef, request),
                        caseRef,
                        may ? sessions(caseRef, plans.get(plans.size() - 1)) : List.of(),
                        may,
                        work.course(caseRef).map(course -> CourseView.of(course, tunica.knowledge())),
                        CasePapers.of(store, caseRef)));
    }

    private List<CasePapers.Way> sessions(String caseRef, KeptDocument plan) {
        return tunica.readPlan("plan", plan.document().body().getBytes(StandardCharsets.UTF_8)).sessions().stream()
                .map(session -> new CasePapers.Way(
                        "/cases/" + caseRef + "/plan/" + plan.number() + "/sessions/" + session.number() + "/delivered",
                        "Record what was delivered in session " + session.number() + " of plan " + plan.number()))
                .toList();
    }

    /** A sheet for the patient, of the latest version of the case. */
    @GetMapping(path = "/cases/{caseRef}/sheet", produces = MediaType.APPLICATION_PDF_VALUE)
    byte[] sheet(@PathVariable String caseRef, Authentication who) {
        return tunica.toPdf(tunica.treatments().sheet(cases.read(cases.looked(caseRef, who)), Map.of()));
    }
}
