package org.tunica.couch;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.Authentication;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.frame.ForPeople;
import org.tunica.frame.NotThere;
import org.tunica.frame.OpenCases;
import org.tunica.frame.Pages;
import org.tunica.frame.Reader;
import org.tunica.frame.Remembered;
import org.tunica.pages.PlanView;
import org.tunica.session.SessionPlan;
import org.tunica.store.DocumentKind;
import org.tunica.store.KeptCase;
import org.tunica.store.KeptDocument;
import org.tunica.store.Role;
import org.tunica.store.Store;

/** The sessions of a case: planned now, or as a plan that is kept. */
@RestController
@ForPeople
final class PlanPages {
    private static final int MOST_REMEMBERED = 24;

    private final Pages pages;
    private final Tunica tunica;
    private final Store store;
    private final OpenCases cases;
    private final CaseWork work;
    private final Remembered<CaseFile, SessionPlan> plans;

    PlanPages(Pages pages, Tunica tunica, Store store, OpenCases cases) {
        this.pages = pages;
        this.tunica = tunica;
        this.store = store;
        this.cases = cases;
        this.work = new CaseWork(tunica, store);
        this.plans = new Remembered<>(MOST_REMEMBERED, tunica::plan);
    }

    /** The plan of that number, or one made now of the latest version of the case. */
    @GetMapping(path = "/cases/{caseRef}/plan", produces = Pages.HTML)
    String plan(
            @PathVariable String caseRef,
            @RequestParam Optional<Long> number,
            HttpServletRequest request,
            Authentication who) {
        KeptCase kept = cases.looked(caseRef, who);
        List<KeptDocument> all = new ArrayList<>(store.documents().of(caseRef, DocumentKind.PLAN));
        Collections.reverse(all);
        Optional<KeptDocument> asked = number.map(wanted ->
                all.stream().filter(one -> one.number() == wanted).findFirst().orElseThrow(() -> new NotThere("plan")));
        SessionPlan plan = asked.map(this::read).orElseGet(() -> plans.of(cases.read(kept)));
        return pages.written(
                "plan.jte",
                new PlanPage(
                        pages.frame("Sessions of case " + caseRef, request),
                        caseRef,
                        shown(kept, asked),
                        PlanView.of(plan, tunica.knowledge()),
                        all.stream().map(KeptLine::of).toList(),
                        number,
                        Reader.of(who).is(Role.SPECIALIST)));
    }

    /** Keeps the plan of the latest version of the case. */
    @PostMapping(path = "/cases/{caseRef}/plan", produces = Pages.HTML)
    ResponseEntity<String> keep(@PathVariable String caseRef, Authentication who) {
        KeptDocument kept = work.plan(Reader.of(who).actor(), caseRef, Optional.empty());
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header("Location", "/cases/" + caseRef + "/plan?number=" + kept.number())
                .build();
    }

    private SessionPlan read(KeptDocument kept) {
        return tunica.readPlan("plan", kept.document().body().getBytes(StandardCharsets.UTF_8));
    }

    private static String shown(KeptCase latest, Optional<KeptDocument> asked) {
        return asked.map(kept -> "This is plan " + kept.number() + ", kept by "
                        + kept.stamp().by() + " at " + KeptLine.minute(kept.stamp()) + ", of version "
                        + kept.document().caseVersion() + " of the case"
                        + (kept.document().caseVersion() == latest.version()
                                ? "."
                                : "; THE CASE HAS CHANGED SINCE, it is now at version " + latest.version() + "."))
                .orElse("This plan was made now, of version " + latest.version()
                        + " of the case. It is NOT KEPT: keep it, and what is done can be recorded against it.");
    }
}
