package org.tunica.library;

import jakarta.servlet.http.HttpServletRequest;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.Authentication;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.archive.PastCaseDesk;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.frame.ForPeople;
import org.tunica.frame.NotThere;
import org.tunica.frame.Pages;
import org.tunica.frame.Reader;
import org.tunica.frame.SaysPage;
import org.tunica.pastcases.Coarsening;
import org.tunica.store.Act;
import org.tunica.store.KeptPastCase;
import org.tunica.store.PastCaseState;
import org.tunica.store.Store;
import org.tunica.store.Subject;

/** Past cases that wait: looked at whole, told less of, released, refused; and released ones taken out again. */
@RestController
@ForPeople
final class PastPages {
    private static final String AT = "/past";
    private static final String LOOK = AT + "/look?id=";

    private final Pages pages;
    private final Store store;
    private final PastCaseDesk desk;

    PastPages(Pages pages, Store store, PastCaseDesk desk) {
        this.pages = pages;
        this.store = store;
        this.desk = desk;
    }

    /** What waits, and in how large a crowd. */
    @GetMapping(path = AT, produces = Pages.HTML)
    String waiting(HttpServletRequest request) {
        PastCaseDesk.WaitingList all = desk.waiting();
        List<PastPage.Line> lines = all.cases().stream()
                .map(one -> new PastPage.Line(one.read().id(), one.place().says()))
                .toList();
        return pages.written(
                "past.jte",
                new PastPage(
                        pages.frame("Past cases", request),
                        lines,
                        all.unreadable(),
                        LOOK + lines.stream().map(PastPage.Line::id).collect(Collectors.joining("&id="))));
    }

    /** Some of them, whole. */
    @GetMapping(path = AT + "/look", produces = Pages.HTML)
    String look(@RequestParam Set<String> id, HttpServletRequest request, Authentication who) {
        List<LookPage.Whole> cases = desk.waiting().cases().stream()
                .filter(one -> id.contains(one.read().id()))
                .map(WaitingWords::of)
                .toList();
        if (cases.isEmpty()) {
            throw new NotThere("past case waiting");
        }
        cases.forEach(one -> store.audit().note(Reader.of(who).actor(), Act.VIEWED, subject(one.id())));
        return pages.written("past-look.jte", new LookPage(pages.frame("Past cases that wait", request), cases));
    }

    /** Releases those whose digests are given back. */
    @PostMapping(path = AT + "/release", produces = Pages.HTML)
    ResponseEntity<String> release(
            @RequestParam(defaultValue = "") Set<String> digest, HttpServletRequest request, Authentication who) {
        return done(request, () -> {
            if (digest.isEmpty()) {
                throw new FaultyInput(
                        "release", List.of(new Fault("case", "none was marked as read; mark each that you have read")));
            }
            desk.release(Reader.of(who).actor(), new HashSet<>(digest));
            return AT;
        });
    }

    /** Tells less of one; it has to be looked at again. */
    @PostMapping(path = AT + "/waiting/{id}/less", produces = Pages.HTML)
    ResponseEntity<String> less(
            @PathVariable String id,
            @RequestParam(defaultValue = "") Set<String> less,
            @RequestParam(defaultValue = "") Set<String> without,
            HttpServletRequest request,
            Authentication who) {
        return done(request, () -> {
            Set<Coarsening.What> wanted = EnumSet.noneOf(Coarsening.What.class);
            for (Coarsening.What what : Coarsening.What.values()) {
                if (less.contains(what.word())) {
                    wanted.add(what);
                }
            }
            if (wanted.isEmpty() && without.isEmpty()) {
                throw new FaultyInput("past case", List.of(new Fault(id, "say what is to be told less exactly")));
            }
            desk.coarsen(Reader.of(who).actor(), id, wanted, without);
            return LOOK + id;
        });
    }

    /** Refuses one; its text is forgotten. */
    @PostMapping(path = AT + "/waiting/{id}/refusal", produces = Pages.HTML)
    ResponseEntity<String> refuse(@PathVariable String id, HttpServletRequest request, Authentication who) {
        return done(request, () -> {
            there(id, PastCaseState.WAITING);
            desk.refuse(Reader.of(who).actor(), id);
            return AT;
        });
    }

    /** Takes a released one out; its text is forgotten, and no search finds it again. */
    @PostMapping(path = AT + "/withdrawal", produces = Pages.HTML)
    ResponseEntity<String> withdraw(
            @RequestParam(defaultValue = "") String id, HttpServletRequest request, Authentication who) {
        return done(request, () -> {
            there(id.strip(), PastCaseState.RELEASED);
            desk.withdraw(Reader.of(who).actor(), id.strip());
            return AT;
        });
    }

    private void there(String id, PastCaseState state) {
        store.pastCases()
                .one(id)
                .map(KeptPastCase::state)
                .filter(state::equals)
                .orElseThrow(() -> new FaultyInput(
                        "past case", List.of(new Fault("id", "no past case of that name is " + state.word()))));
    }

    /** Something that leads to an address when it can be done. */
    private interface Doing {
        String leadsTo();
    }

    private ResponseEntity<String> done(HttpServletRequest request, Doing doing) {
        try {
            return ResponseEntity.status(HttpStatus.SEE_OTHER)
                    .header("Location", doing.leadsTo())
                    .build();
        } catch (FaultyInput e) {
            return ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT)
                    .body(pages.says(new SaysPage(
                            pages.frame("That did not work", request),
                            e.faults().stream().map(Fault::toString).toList(),
                            List.of(new SaysPage.Way(AT, "Back to past cases")))));
        }
    }

    private static Subject subject(String id) {
        return new Subject("past-case", id);
    }
}
