package org.tunica.web;

import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.security.Principal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.Tunica;
import org.tunica.couch.CaseWork;
import org.tunica.couch.KeptNote;
import org.tunica.frame.NotThere;
import org.tunica.paper.Paper;
import org.tunica.store.Act;
import org.tunica.store.Actor;
import org.tunica.store.DocumentKind;
import org.tunica.store.KeptDocument;
import org.tunica.store.Store;
import org.tunica.store.Subject;

/** What is made from a kept case, and kept with it. */
@RestController
@RequestMapping(path = "/api/cases/{caseRef}", produces = MediaType.APPLICATION_JSON_VALUE)
final class DocumentsController {
    /** A page of its own: it brings its style along, and nothing else may come with it. */
    private static final String OF_NOTES =
            "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'; sandbox";

    private final Store store;
    private final CaseWork work;

    /** How a note is wanted. */
    enum NoteForm {
        JSON,
        HTML,
        PDF
    }

    DocumentsController(Tunica tunica, Store store) {
        this.store = store;
        this.work = new CaseWork(tunica, store);
    }

    /** Makes an advice of the latest version, or of the one named, and keeps it. */
    @PostMapping("/advice")
    ResponseEntity<String> advise(@PathVariable String caseRef, @RequestParam Optional<Long> version, Principal who) {
        return made(work.advise(actor(who), caseRef, version));
    }

    /** Makes a plan of the latest version, or of the one named, and keeps it. */
    @PostMapping("/plan")
    ResponseEntity<String> plan(@PathVariable String caseRef, @RequestParam Optional<Long> version, Principal who) {
        return made(work.plan(actor(who), caseRef, version));
    }

    /** Keeps what was delivered, {@code tunica-delivered/1}, after the last plan or the one named; answers its note. */
    @PostMapping(path = "/delivered", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<String> deliver(
            @PathVariable String caseRef, @RequestParam Optional<Long> plan, @RequestBody byte[] json, Principal who) {
        return made(work.deliver(actor(who), caseRef, plan, json));
    }

    /** Keeps a follow-up, {@code tunica-followup/1}; answers the treatment as a whole, {@code tunica-treatment/1}. */
    @PostMapping(path = "/follow-up", consumes = MediaType.APPLICATION_JSON_VALUE)
    @ResponseStatus(HttpStatus.CREATED)
    String followUp(
            @PathVariable String caseRef, @RequestParam Optional<Long> plan, @RequestBody byte[] json, Principal who) {
        return work.followUp(actor(who), caseRef, plan, json);
    }

    /** The documents of a kind, first to last. */
    @GetMapping("/{kind}")
    List<DocumentLine> list(@PathVariable String caseRef, @PathVariable String kind, Principal who) {
        DocumentKind known = kind(kind);
        if (store.cases().latest(caseRef).isEmpty()) {
            throw new NotThere("case");
        }
        viewed(who, new Subject("documents", caseRef + "/" + known.word()));
        return store.documents().of(caseRef, known).stream()
                .map(DocumentLine::of)
                .toList();
    }

    /** One document as it was kept; a note also as HTML or PDF. */
    @GetMapping(path = "/{kind}/{number}", produces = MediaType.ALL_VALUE)
    ResponseEntity<byte[]> one(
            @PathVariable String caseRef,
            @PathVariable String kind,
            @PathVariable long number,
            @RequestParam(defaultValue = "json") String as,
            Principal who) {
        DocumentKind known = kind(kind);
        NoteForm form = form(known, as);
        KeptDocument kept = store.documents().one(caseRef, known, number).orElseThrow(() -> new NotThere("document"));
        viewed(who, new Subject("document", caseRef + "/" + known.word() + "/" + number));
        return inForm(kept.document().body(), form);
    }

    private static ResponseEntity<byte[]> inForm(String body, NoteForm form) {
        return switch (form) {
            case JSON ->
                ResponseEntity.ok().contentType(MediaType.APPLICATION_JSON).body(utf8(body));
            case HTML ->
                ResponseEntity.ok()
                        .contentType(new MediaType(MediaType.TEXT_HTML, StandardCharsets.UTF_8))
                        .header("Content-Security-Policy", OF_NOTES)
                        .body(utf8(KeptNote.read(body).html()));
            case PDF ->
                ResponseEntity.ok()
                        .contentType(MediaType.APPLICATION_PDF)
                        .body(Paper.pdf(KeptNote.read(body).html()));
        };
    }

    private static NoteForm form(DocumentKind kind, String as) {
        return Arrays.stream(NoteForm.values())
                .filter(form -> form.name().toLowerCase(Locale.ROOT).equals(as))
                .filter(form -> kind == DocumentKind.NOTE || form == NoteForm.JSON)
                .findFirst()
                .orElseThrow(() -> new NotThere("form"));
    }

    private static DocumentKind kind(String word) {
        return Arrays.stream(DocumentKind.values())
                .filter(kind -> kind.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new NotThere("kind"));
    }

    private static ResponseEntity<String> made(KeptDocument kept) {
        String at = "/api/cases/" + kept.document().caseRef() + "/"
                + kept.document().kind().word() + "/" + kept.number();
        return ResponseEntity.created(URI.create(at)).body(kept.document().body());
    }

    private void viewed(Principal who, Subject subject) {
        store.audit().note(actor(who), Act.VIEWED, subject);
    }

    private static Actor actor(Principal who) {
        return new Actor(who.getName());
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
