package org.tunica.couch;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import org.tunica.frame.ForPeople;
import org.tunica.frame.NotThere;
import org.tunica.frame.Pages;
import org.tunica.frame.Reader;
import org.tunica.session.SessionPlan;
import org.tunica.store.Act;
import org.tunica.store.DocumentKind;
import org.tunica.store.KeptDocument;
import org.tunica.store.Store;
import org.tunica.store.Subject;
import org.tunica.wording.SegmentWords;

/** Where is recorded what was delivered in a session; the form starts from what the plan intends, none of it confirmed. */
@RestController
@ForPeople
final class DeliveredPages {
    private static final String AT = "/cases/{caseRef}/plan/{number}/sessions/{session}/delivered";

    private final Pages pages;
    private final Tunica tunica;
    private final Store store;
    private final CaseWork work;
    private final DeliveredAsks asks;

    DeliveredPages(Pages pages, Tunica tunica, Store store) {
        this.pages = pages;
        this.tunica = tunica;
        this.store = store;
        this.work = new CaseWork(tunica, store);
        this.asks = DeliveredAsks.of(tunica.knowledge());
    }

    /** The form with what the plan intends in it. */
    @GetMapping(path = AT, produces = Pages.HTML)
    String form(
            @PathVariable String caseRef,
            @PathVariable long number,
            @PathVariable int session,
            HttpServletRequest request,
            Authentication who) {
        Planned planned = planned(caseRef, number, session);
        store.audit()
                .note(
                        Reader.of(who).actor(),
                        Act.VIEWED,
                        new Subject("document", caseRef + "/" + DocumentKind.PLAN.word() + "/" + number));
        return page(planned, new Intended(planned.plan(), planned.session()).typed(), List.of(), request);
    }

    /** Keeps the record with its note; one that cannot be kept comes back whole, with every fault at its field. */
    @PostMapping(path = AT, produces = Pages.HTML)
    ResponseEntity<String> deliver(
            @PathVariable String caseRef,
            @PathVariable long number,
            @PathVariable int session,
            @RequestParam MultiValueMap<String, String> fields,
            HttpServletRequest request,
            Authentication who) {
        Planned planned = planned(caseRef, number, session);
        Typed typed = new Typed(fields);
        TypedDelivery written = TypedDelivery.of(
                asks, planned.session(), caseRef, typed, new Intended(planned.plan(), planned.session()).all());
        List<Fault> faults = new ArrayList<>(written.faults());
        if (faults.isEmpty()) {
            try {
                work.deliver(
                        Reader.of(who).actor(),
                        caseRef,
                        Optional.of(number),
                        written.json().getBytes(StandardCharsets.UTF_8));
                return ResponseEntity.status(HttpStatus.SEE_OTHER)
                        .header("Location", "/cases/" + caseRef + "/papers")
                        .build();
            } catch (FaultyInput e) {
                e.faults().forEach(fault -> faults.add(new Fault(written.field(fault.place()), fault.says())));
            }
        } else {
            faults.addAll(written.read(tunica));
        }
        return ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT).body(page(planned, typed, faults, request));
    }

    private record Planned(String caseRef, long number, SessionPlan plan, SessionPlan.Session session) {}

    private Planned planned(String caseRef, long number, int session) {
        KeptDocument kept =
                store.documents().one(caseRef, DocumentKind.PLAN, number).orElseThrow(() -> new NotThere("plan"));
        SessionPlan plan = tunica.readPlan("plan", kept.document().body().getBytes(StandardCharsets.UTF_8));
        return new Planned(
                caseRef,
                number,
                plan,
                plan.sessions().stream()
                        .filter(one -> one.number() == session)
                        .findFirst()
                        .orElseThrow(() -> new NotThere("session")));
    }

    private String page(Planned planned, Typed typed, List<Fault> faults, HttpServletRequest request) {
        FormFields fields = new FormFields(typed, faults);
        List<EntryPage.Part> parts = new ArrayList<>();
        List<SessionPlan.Step> steps = planned.session().steps();
        for (int at = 0; at < steps.size(); at++) {
            parts.add(part(fields, typed, at, steps.get(at)));
        }
        FormBlock head = fields.block("", "The session", asks.head());
        String at = "/cases/" + planned.caseRef() + "/plan/" + planned.number() + "/sessions/"
                + planned.session().number() + "/delivered";
        return pages.written(
                "entry.jte",
                new EntryPage(
                        pages.frame(
                                "What was delivered, case " + planned.caseRef() + ", session "
                                        + planned.session().number(),
                                request),
                        planned.caseRef(),
                        at,
                        List.of(
                                "The fields start with what plan " + planned.number()
                                        + " intends. NOTHING OF IT IS CONFIRMED: look through each segment, change what"
                                        + " was done otherwise, empty what nobody recorded, and confirm it.",
                                "No name of a patient; those who took part by initials."),
                        head,
                        parts,
                        fields.mends(),
                        "Keep the record and write the note"));
    }

    private EntryPage.Part part(FormFields fields, Typed typed, int at, SessionPlan.Step step) {
        String path = Intended.segment(at);
        String title = SegmentWords.title(step.ref(), step.side(), step.vein(), step.level());
        String confirm = TypedDelivery.confirm(at);
        return new EntryPage.Part(
                fields.block(
                        path,
                        title,
                        asks.segment(
                                tunica.knowledge().technique(step.technique()).family())),
                List.of("Intended: " + step.says() + "."),
                confirm,
                !typed.text(confirm).isEmpty());
    }
}
