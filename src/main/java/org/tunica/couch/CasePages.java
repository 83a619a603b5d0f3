package org.tunica.couch;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.springframework.security.core.Authentication;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.frame.ForPeople;
import org.tunica.frame.Pages;
import org.tunica.frame.Reader;
import org.tunica.store.Act;
import org.tunica.store.KeptCase;
import org.tunica.store.Page;
import org.tunica.store.Role;
import org.tunica.store.Store;
import org.tunica.store.Subject;

/** The list of the cases that are kept. */
@RestController
@ForPeople
final class CasePages {
    private static final int LISTED = 100;

    private final Pages pages;
    private final Store store;

    CasePages(Pages pages, Store store) {
        this.pages = pages;
        this.store = store;
    }

    /** The cases saved last, and the ways to another one. */
    @GetMapping(path = "/cases", produces = Pages.HTML)
    String list(HttpServletRequest request, Authentication who) {
        Reader reader = Reader.of(who);
        store.audit().note(reader.actor(), Act.VIEWED, new Subject("cases", "list"));
        List<CaseLine> lines = store.cases().newest(Page.newest(LISTED)).stream()
                .map(this::line)
                .toList();
        return pages.written(
                "cases.jte", new CasesPage(pages.frame("Cases", request), lines, reader.is(Role.SPECIALIST)));
    }

    private CaseLine line(KeptCase kept) {
        return CaseLine.of(kept, DemoCases.invented(store.cases(), kept));
    }
}
