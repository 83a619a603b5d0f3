package org.tunica.couch;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.JsonText;
import org.tunica.frame.ForPeople;
import org.tunica.frame.NotThere;
import org.tunica.frame.Pages;
import org.tunica.frame.Reader;
import org.tunica.store.Act;
import org.tunica.store.Cases;
import org.tunica.store.KeptCase;
import org.tunica.store.OutOfDate;
import org.tunica.store.Store;
import org.tunica.store.Subject;

/** A case as a form: a new one, and the next version of one that is kept. Nothing typed is ever lost. */
@RestController
@ForPeople
final class CaseFormPages {
    private static final String NEW = "/cases/new";

    /** Addresses beside those of cases; a case of that name could not be opened. */
    private static final Set<String> TAKEN = Set.of("new", "import");

    private final Pages pages;
    private final Tunica tunica;
    private final Store store;
    private final CaseAsks asks;

    CaseFormPages(Pages pages, Tunica tunica, Store store) {
        this.pages = pages;
        this.tunica = tunica;
        this.store = store;
        this.asks = CaseAsks.of(tunica.knowledge());
    }

    @GetMapping(path = NEW, produces = Pages.HTML)
    String blank(HttpServletRequest request) {
        return page(request, new Sent(NEW, Cases.NONE, List.of(), Typed.blank()), List.of());
    }

    @PostMapping(path = NEW, produces = Pages.HTML)
    ResponseEntity<String> add(
            @RequestParam MultiValueMap<String, String> fields, HttpServletRequest request, Authentication who) {
        return answer(Sent.of(NEW, Cases.NONE, fields), fields.getFirst("do"), request, who);
    }

    @GetMapping(path = "/cases/{caseRef}/edit", produces = Pages.HTML)
    String edit(@PathVariable String caseRef, HttpServletRequest request, Authentication who) {
        KeptCase kept = store.cases().latest(caseRef).orElseThrow(() -> new NotThere("case"));
        Subject subject = new Subject("case", kept.caseRef() + "/" + kept.version());
        store.audit().note(Reader.of(who).actor(), Act.VIEWED, subject);
        return page(request, new Sent(address(caseRef), kept.version(), List.of(), typed(kept)), List.of());
    }

    @PostMapping(path = "/cases/{caseRef}/edit", produces = Pages.HTML)
    ResponseEntity<String> change(
            @PathVariable String caseRef,
            @RequestParam(defaultValue = "0") long seen,
            @RequestParam MultiValueMap<String, String> fields,
            HttpServletRequest request,
            Authentication who) {
        if (store.cases().latest(caseRef).isEmpty()) {
            throw new NotThere("case");
        }
        Sent sent = Sent.of(address(caseRef), seen, fields);
        return answer(sent.with(sent.typed().with("caseRef", caseRef)), fields.getFirst("do"), request, who);
    }

    private static String address(String caseRef) {
        return "/cases/" + caseRef + "/edit";
    }

    private ResponseEntity<String> answer(
            Sent sent, @Nullable String wanted, HttpServletRequest request, Authentication who) {
        return Optional.ofNullable(wanted)
                .flatMap(step -> FormStep.of(step, sent.typed()))
                .map(step -> ResponseEntity.ok(page(request, sent.with(step.typed()), List.of())))
                .orElseGet(() -> saved(sent, request, Reader.of(who)));
    }

    private ResponseEntity<String> saved(Sent sent, HttpServletRequest request, Reader reader) {
        TypedCase written = TypedCase.of(asks, sent.typed());
        List<Fault> faults = faults(written, sent);
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

    private List<Fault> faults(TypedCase written, Sent sent) {
        List<Fault> faults = new ArrayList<>(written.faults());
        if (TAKEN.contains(sent.typed().text("caseRef"))) {
            faults.add(new Fault("caseRef", "is a word of this program's addresses; take another one"));
        }
        try {
            tunica.readCase("case", written.json().getBytes(StandardCharsets.UTF_8));
        } catch (FaultyInput e) {
            e.faults().forEach(fault -> faults.add(new Fault(written.field(fault.place()), fault.says())));
        }
        return faults;
    }

    private ResponseEntity<String> refused(HttpServletRequest request, Sent sent, List<Fault> faults) {
        return ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT).body(page(request, sent, faults));
    }

    /** Tells what the other one changed; whoever saves then has seen it. */
    private ResponseEntity<String> late(HttpServletRequest request, Sent sent, String caseRef) {
        KeptCase latest = store.cases().latest(caseRef).orElseThrow(() -> new NotThere("case"));
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
                .ifPresent(before -> notes.addAll(Meanwhile.changes(asks, typed(before), typed(latest))));
        String page = page(request, new Sent(sent.action(), latest.version(), notes, sent.typed()), List.of());
        return ResponseEntity.status(HttpStatus.CONFLICT).body(page);
    }

    private Typed typed(KeptCase kept) {
        return CaseTrees.typed(asks, JsonText.parse("case", kept.json().getBytes(StandardCharsets.UTF_8)));
    }

    private String page(HttpServletRequest request, Sent sent, List<Fault> faults) {
        boolean fresh = sent.seen() == Cases.NONE;
        String title = fresh ? "New case" : "Case " + sent.typed().text("caseRef") + ", next version";
        return pages.written(
                "case-form.jte",
                new CaseFormPage(
                        pages.frame(title, request),
                        sent.action(),
                        sent.seen(),
                        !fresh,
                        sent.notes(),
                        CaseForm.of(asks, sent.typed(), faults)));
    }

    /**
     * A form that was sent.
     *
     * @param notes told when it was opened, and still to be seen
     */
    private record Sent(String action, long seen, List<String> notes, Typed typed) {
        static Sent of(String action, long seen, MultiValueMap<String, String> fields) {
            return new Sent(action, seen, fields.getOrDefault("note", List.of()), new Typed(fields).counted());
        }

        Sent with(Typed other) {
            return new Sent(action, seen, notes, other);
        }
    }
}
