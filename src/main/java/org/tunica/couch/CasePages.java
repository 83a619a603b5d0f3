package org.tunica.couch;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.List;
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
import org.tunica.casefile.FaultyInput;
import org.tunica.frame.ForPeople;
import org.tunica.frame.NotThere;
import org.tunica.frame.Pages;
import org.tunica.frame.Reader;
import org.tunica.pages.AdviceView;
import org.tunica.store.Act;
import org.tunica.store.Actor;
import org.tunica.store.Cases;
import org.tunica.store.KeptCase;
import org.tunica.store.OutOfDate;
import org.tunica.store.Page;
import org.tunica.store.Role;
import org.tunica.store.Store;
import org.tunica.store.Subject;

/** Pages of the specialist: the cases that are kept, and the advice for one. */
@RestController
@ForPeople
final class CasePages {
    private static final int LISTED = 100;

    private final Pages pages;
    private final Tunica tunica;
    private final Store store;

    CasePages(Pages pages, Tunica tunica, Store store) {
        this.pages = pages;
        this.tunica = tunica;
        this.store = store;
    }

    /** The cases saved last, and a field for another one. */
    @GetMapping(path = "/cases", produces = Pages.HTML)
    String list(HttpServletRequest request, Authentication who) {
        store.audit().note(new Actor(who.getName()), Act.VIEWED, new Subject("cases", "list"));
        return pages.written("cases.jte", page(request, who, "", List.of()));
    }

    /** Saves a new case; one that cannot be read comes back whole, with every fault and its place. */
    @PostMapping(path = "/cases", produces = Pages.HTML)
    ResponseEntity<String> save(@RequestParam("case") String text, HttpServletRequest request, Authentication who) {
        try {
            CaseFile read = tunica.readCase("case", text.getBytes(StandardCharsets.UTF_8));
            store.cases().save(new Actor(who.getName()), read.caseRef(), Cases.NONE, text);
            return ResponseEntity.status(HttpStatus.SEE_OTHER)
                    .header("Location", "/cases/" + read.caseRef())
                    .build();
        } catch (FaultyInput e) {
            return refused(
                    request,
                    who,
                    text,
                    e.faults().stream()
                            .map(fault -> fault.place() + ": " + fault.says())
                            .toList());
        } catch (OutOfDate e) {
            return refused(
                    request, who, text, List.of("There is a case of that reference already; give this one another."));
        }
    }

    /** The advice for the latest version of a case. */
    @GetMapping(path = "/cases/{caseRef}", produces = Pages.HTML)
    String advice(@PathVariable String caseRef, HttpServletRequest request, Authentication who) {
        KeptCase kept = store.cases().latest(caseRef).orElseThrow(() -> new NotThere("case"));
        store.audit()
                .note(new Actor(who.getName()), Act.VIEWED, new Subject("case", kept.caseRef() + "/" + kept.version()));
        CaseFile caseFile = tunica.readCase("case", kept.json().getBytes(StandardCharsets.UTF_8));
        AdviceView advice = AdviceView.of(caseFile, tunica.advise(caseFile), tunica.knowledge());
        return pages.written(
                "advice.jte",
                new CasePage(
                        pages.frame("Case " + kept.caseRef(), request),
                        line(kept),
                        Reader.of(who).is(Role.SPECIALIST),
                        advice));
    }

    private ResponseEntity<String> refused(
            HttpServletRequest request, Authentication who, String text, List<String> faults) {
        return ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT)
                .body(pages.written("cases.jte", page(request, who, text, faults)));
    }

    private CasesPage page(HttpServletRequest request, Authentication who, String text, List<String> faults) {
        List<CaseLine> lines = store.cases().newest(Page.newest(LISTED)).stream()
                .map(this::line)
                .toList();
        boolean mayWrite = Reader.of(who).is(Role.SPECIALIST);
        return new CasesPage(pages.frame("Cases", request), lines, mayWrite, text, faults);
    }

    private CaseLine line(KeptCase kept) {
        return CaseLine.of(kept, DemoCases.invented(store.cases(), kept));
    }
}
