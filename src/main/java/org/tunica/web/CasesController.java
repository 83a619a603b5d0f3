package org.tunica.web;

import java.nio.charset.StandardCharsets;
import java.security.Principal;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.couch.CaseLine;
import org.tunica.couch.DemoCases;
import org.tunica.frame.NotThere;
import org.tunica.store.Act;
import org.tunica.store.Actor;
import org.tunica.store.Cases;
import org.tunica.store.KeptCase;
import org.tunica.store.Store;
import org.tunica.store.Subject;

/** Cases that are kept, every version of them. Whoever looks at one is told of in the audit trail. */
@RestController
@RequestMapping(path = "/api/cases", produces = MediaType.APPLICATION_JSON_VALUE)
final class CasesController {
    private final Tunica tunica;
    private final Store store;

    CasesController(Tunica tunica, Store store) {
        this.tunica = tunica;
        this.store = store;
    }

    /** The cases saved last, each in its latest version. */
    @GetMapping
    CaseLine.Stretched list(Stretch stretch, Principal who) {
        List<KeptCase> found = store.cases().newest(stretch.page());
        store.audit().note(new Actor(who.getName()), Act.VIEWED, new Subject("cases", "list"));
        Optional<Long> next = found.size() < stretch.page().most()
                ? Optional.empty()
                : Optional.of(found.get(found.size() - 1).stamp().auditNumber());
        return new CaseLine.Stretched(found.stream().map(this::line).toList(), next);
    }

    /** Saves the next version of a case, {@code tunica-case/1}, character by character. */
    @PutMapping(path = "/{caseRef}", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<CaseLine> save(
            @PathVariable String caseRef,
            @RequestBody byte[] json,
            @RequestHeader(HttpHeaders.IF_MATCH) Optional<String> ifMatch,
            @RequestHeader(HttpHeaders.IF_NONE_MATCH) Optional<String> ifNoneMatch,
            Principal who) {
        long seen = Seen.version(ifMatch, ifNoneMatch);
        CaseFile read = tunica.readCase("body", json);
        if (!read.caseRef().equals(caseRef)) {
            throw new FaultyInput(
                    "case", List.of(new Fault("$.caseRef", "must be the reference in the address, " + caseRef)));
        }
        String text = new String(json, StandardCharsets.UTF_8);
        KeptCase kept = store.cases().save(new Actor(who.getName()), caseRef, seen, text);
        return ResponseEntity.status(seen == Cases.NONE ? HttpStatus.CREATED : HttpStatus.OK)
                .eTag(Seen.tag(kept.version()))
                .body(line(kept));
    }

    /** The latest version of a case as it was saved. */
    @GetMapping("/{caseRef}")
    ResponseEntity<String> latest(@PathVariable String caseRef, Principal who) {
        return shown(store.cases().latest(caseRef), who);
    }

    /** One version of a case as it was saved. */
    @GetMapping("/{caseRef}/versions/{version}")
    ResponseEntity<String> version(@PathVariable String caseRef, @PathVariable long version, Principal who) {
        return shown(store.cases().version(caseRef, version), who);
    }

    /** Every version of a case, first to latest. */
    @GetMapping("/{caseRef}/versions")
    List<CaseLine> history(@PathVariable String caseRef, Principal who) {
        List<KeptCase> versions = store.cases().history(caseRef);
        if (versions.isEmpty()) {
            throw new NotThere("case");
        }
        viewed(versions.get(versions.size() - 1), who);
        return versions.stream().map(this::line).toList();
    }

    private ResponseEntity<String> shown(Optional<KeptCase> found, Principal who) {
        KeptCase kept = found.orElseThrow(() -> new NotThere("case"));
        viewed(kept, who);
        return ResponseEntity.ok().eTag(Seen.tag(kept.version())).body(kept.json());
    }

    private void viewed(KeptCase kept, Principal who) {
        Subject subject = new Subject("case", kept.caseRef() + "/" + kept.version());
        store.audit().note(new Actor(who.getName()), Act.VIEWED, subject);
    }

    private CaseLine line(KeptCase kept) {
        return CaseLine.of(kept, DemoCases.invented(store.cases(), kept));
    }
}
