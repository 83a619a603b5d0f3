package org.tunica.web;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.http.HttpMethod;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.FaultyInput;
import org.tunica.pages.AdviceView;
import org.tunica.store.Act;
import org.tunica.store.Actor;
import org.tunica.store.Cases;
import org.tunica.store.KeptCase;
import org.tunica.store.OutOfDate;
import org.tunica.store.Page;
import org.tunica.store.Store;
import org.tunica.store.Subject;

/** Pages of the specialist: the cases that are kept, and the advice for one. */
@RestController
final class CasePages {
    private static final String HTML = "text/html;charset=UTF-8";
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
    @GetMapping(path = "/cases", produces = HTML)
    String list(HttpServletRequest request, Authentication who) {
        store.audit().note(new Actor(who.getName()), Act.VIEWED, new Subject("cases", "list"));
        return pages.cases(page(request, who, "", List.of()));
    }

    /** Saves a new case; one that cannot be read comes back whole, with every fault and its place. */
    @PostMapping(path = "/cases", produces = HTML)
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
    @GetMapping(path = "/cases/{caseRef}", produces = HTML)
    String advice(@PathVariable String caseRef, HttpServletRequest request, Authentication who) {
        KeptCase kept = store.cases().latest(caseRef).orElseThrow(() -> new NotThere("case"));
        store.audit()
                .note(new Actor(who.getName()), Act.VIEWED, new Subject("case", kept.caseRef() + "/" + kept.version()));
        CaseFile caseFile = tunica.readCase("case", kept.json().getBytes(StandardCharsets.UTF_8));
        AdviceView advice = AdviceView.of(caseFile, tunica.advise(caseFile), tunica.knowledge());
        return pages.advice(new CasePage(pages.frame("Case " + kept.caseRef(), request), line(kept), advice));
    }

    private ResponseEntity<String> refused(
            HttpServletRequest request, Authentication who, String text, List<String> faults) {
        return ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT)
                .body(pages.cases(page(request, who, text, faults)));
    }

    private CasesPage page(HttpServletRequest request, Authentication who, String text, List<String> faults) {
        List<CaseLine> lines = store.cases().newest(Page.newest(LISTED)).stream()
                .map(this::line)
                .toList();
        boolean mayWrite = openTo(HttpMethod.POST, "/cases", roles(who));
        return new CasesPage(pages.frame("Cases", request), lines, mayWrite, text, faults);
    }

    /** Whether somebody with these roles may see the cases. */
    static boolean openTo(Set<String> roles) {
        return openTo(HttpMethod.GET, "/cases/**", roles);
    }

    private static boolean openTo(HttpMethod method, String pattern, Set<String> roles) {
        return Permission.OF_PEOPLE.stream()
                .filter(permission -> permission.method().equals(method)
                        && permission.pattern().equals(pattern))
                .anyMatch(permission -> permission.allows(roles));
    }

    private static Set<String> roles(Authentication who) {
        return who.getAuthorities().stream().map(GrantedAuthority::getAuthority).collect(Collectors.toSet());
    }

    /** A page for a person, not a problem for a program. */
    @ExceptionHandler
    ResponseEntity<String> notThere(NotThere missing, HttpServletRequest request) {
        return says(request, HttpStatus.NOT_FOUND, List.of("There is no such " + missing.getMessage() + " here."));
    }

    /** A case kept under other rules may hold what these do not know. */
    @ExceptionHandler
    ResponseEntity<String> faulty(FaultyInput faulty, HttpServletRequest request) {
        List<String> says = new ArrayList<>(List.of("The rules in force cannot read this " + faulty.what() + ":"));
        faulty.faults().forEach(fault -> says.add(fault.place() + ": " + fault.says()));
        return says(request, HttpStatus.UNPROCESSABLE_CONTENT, says);
    }

    private ResponseEntity<String> says(HttpServletRequest request, HttpStatus status, List<String> lines) {
        SaysPage page = new SaysPage(
                pages.frame("That did not work", request), lines, List.of(new SaysPage.Way("/cases", "All cases")));
        return ResponseEntity.status(status)
                .contentType(MediaType.parseMediaType(HTML))
                .body(pages.says(page));
    }

    private CaseLine line(KeptCase kept) {
        return CaseLine.of(kept, DemoCases.invented(store.cases(), kept));
    }
}
