package org.tunica.web;

import java.security.Principal;
import java.util.List;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.server.ResponseStatusException;
import org.tunica.store.Act;
import org.tunica.store.Actor;
import org.tunica.store.AuditRow;
import org.tunica.store.AuditTrail;
import org.tunica.store.Store;
import org.tunica.store.Subject;

/** The audit trail, for those who look after it. Looking at it is told in it. */
@RestController
@RequestMapping(path = "/api/audit", produces = MediaType.APPLICATION_JSON_VALUE)
final class AuditController {
    private final AuditTrail audit;

    AuditController(Store store) {
        this.audit = store.audit();
    }

    /** The head, to be noted elsewhere. */
    record Head(String head) {}

    /** The newest rows. */
    @GetMapping
    List<AuditRow> newest(Stretch stretch, Principal who) {
        List<AuditRow> rows = audit.newest(stretch.page());
        viewed(who);
        return rows;
    }

    /** What happened to one subject, newest first. */
    @GetMapping("/about")
    List<AuditRow> about(@RequestParam String kind, @RequestParam String id, Stretch stretch, Principal who) {
        List<AuditRow> rows = audit.about(subject(kind, id), stretch.page());
        viewed(who);
        return rows;
    }

    /** The head of the trail. */
    @GetMapping("/head")
    Head head() {
        return new Head(audit.head().toString());
    }

    private static Subject subject(String kind, String id) {
        try {
            return new Subject(kind, id);
        } catch (IllegalArgumentException e) {
            throw new ResponseStatusException(HttpStatus.BAD_REQUEST, "kind and id are words without blanks", e);
        }
    }

    private void viewed(Principal who) {
        audit.note(new Actor(who.getName()), Act.VIEWED, new Subject("audit", "rows"));
    }
}
