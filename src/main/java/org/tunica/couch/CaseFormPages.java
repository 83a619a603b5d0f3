package org.tunica.couch;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.Authentication;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.casefile.Fault;
import org.tunica.frame.ForPeople;
import org.tunica.frame.OpenCases;
import org.tunica.frame.Pages;
import org.tunica.frame.Reader;
import org.tunica.store.Cases;
import org.tunica.store.KeptCase;
import org.tunica.store.OutOfDate;
import org.tunica.store.Page;
import org.tunica.store.Store;

/** A case as a form: a new one, and the next version of one that is kept. Nothing typed is ever lost. */
@RestController
@ForPeople
final class CaseFormPages {
    /** What the button sends that takes over a room. */
    private static final String LAST_ROOM = "last-room";

    private static final String ROOM = "room";
    private static final int LOOKED_THROUGH = 100;

    private final FormDesk desk;
    private final Store store;
    private final OpenCases cases;

    CaseFormPages(FormDesk desk, Store store, OpenCases cases) {
        this.desk = desk;
        this.store = store;
        this.cases = cases;
    }

    @GetMapping(path = SentForm.NEW, produces = Pages.HTML)
    String blank(HttpServletRequest request) {
        return desk.page(request, SentForm.fresh(List.of(), Typed.blank()), List.of());
    }

    @PostMapping(path = SentForm.NEW, produces = Pages.HTML)
    ResponseEntity<String> add(
            @RequestParam MultiValueMap<String, String> fields, HttpServletRequest request, Authentication who) {
        return answer(SentForm.of(SentForm.NEW, Cases.NONE, fields), fields.getFirst("do"), request, who);
    }

    @GetMapping(path = "/cases/{caseRef}/edit", produces = Pages.HTML)
    String edit(@PathVariable String caseRef, HttpServletRequest request, Authentication who) {
        KeptCase kept = cases.looked(caseRef, who);
        return desk.page(
                request, new SentForm(address(caseRef), kept.version(), List.of(), desk.typed(kept)), List.of());
    }

    @PostMapping(path = "/cases/{caseRef}/edit", produces = Pages.HTML)
    ResponseEntity<String> change(
            @PathVariable String caseRef,
            @RequestParam(defaultValue = "0") long seen,
            @RequestParam MultiValueMap<String, String> fields,
            HttpServletRequest request,
            Authentication who) {
        cases.latest(caseRef);
        SentForm sent = SentForm.of(address(caseRef), seen, fields);
        return answer(sent.with(sent.typed().with("caseRef", caseRef)), fields.getFirst("do"), request, who);
    }

    private static String address(String caseRef) {
        return "/cases/" + caseRef + "/edit";
    }

    private ResponseEntity<String> answer(
            SentForm sent, @Nullable String wanted, HttpServletRequest request, Authentication who) {
        if (LAST_ROOM.equals(wanted)) {
            return ResponseEntity.ok(desk.page(request, withLastRoom(sent, who), List.of()));
        }
        return Optional.ofNullable(wanted)
                .flatMap(step -> FormStep.of(step, sent.typed()))
                .map(step -> ResponseEntity.ok(desk.page(request, sent.with(step.typed()), List.of())))
                .orElseGet(() -> saved(sent, request, Reader.of(who)));
    }

    /** The room seldom changes from one case to the next; what was typed of it before gives way, and the page says so. */
    private SentForm withLastRoom(SentForm sent, Authentication who) {
        String name = Reader.of(who).name();
        Optional<KeptCase> last = store.cases().newest(Page.newest(LOOKED_THROUGH)).stream()
                .filter(kept -> kept.stamp().by().equals(name))
                .findFirst();
        if (last.isEmpty()) {
            return sent.noted("None of the cases saved last is yours, so no room was taken over.");
        }
        cases.note(last.get(), who);
        return sent.with(sent.typed().taking(ROOM, desk.typed(last.get())))
                .noted("The room was taken over from case " + last.get().caseRef() + "; nothing is saved yet.");
    }

    private ResponseEntity<String> saved(SentForm sent, HttpServletRequest request, Reader reader) {
        TypedCase written = desk.written(sent.typed());
        List<Fault> faults = desk.faults(sent.typed(), written);
        if (!faults.isEmpty()) {
            return refused(request, sent, faults);
        }
        String caseRef = sent.typed().text("caseRef");
        try {
            store.cases().save(reader.actor(), caseRef, sent.seen(), written.json());
            return ResponseEntity.status(HttpStatus.SEE_OTHER)
                    .header("Location", "/cases/" + caseRef)
                    .build();
        } catch (OutOfDate e) {
            return late(request, sent, caseRef);
        }
    }

    private ResponseEntity<String> refused(HttpServletRequest request, SentForm sent, List<Fault> faults) {
        return ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT).body(desk.page(request, sent, faults));
    }

    /** Tells what the other one changed; whoever saves then has seen it. */
    private ResponseEntity<String> late(HttpServletRequest request, SentForm sent, String caseRef) {
        KeptCase latest = cases.latest(caseRef);
        if (sent.seen() == Cases.NONE) {
            Fault taken = new Fault("caseRef", "is the name of another case already; give this one another");
            return refused(request, sent, List.of(taken));
        }
        List<String> notes = new ArrayList<>();
        notes.add("Version " + latest.version() + " was saved meanwhile by "
                + latest.stamp().by()
                + ". Nothing of yours was saved yet. What it changed since you opened the form stands below; yours is in the"
                + " fields. Saving again puts yours in its place.");
        store.cases()
                .version(caseRef, sent.seen())
                .ifPresent(
                        before -> notes.addAll(Meanwhile.changes(desk.asks(), desk.typed(before), desk.typed(latest))));
        String page = desk.page(request, new SentForm(sent.action(), latest.version(), notes, sent.typed()), List.of());
        return ResponseEntity.status(HttpStatus.CONFLICT).body(page);
    }
}
