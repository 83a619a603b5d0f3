package org.tunica.web;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.Authentication;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.server.ResponseStatusException;
import org.tunica.fhir.HookAnswer;
import org.tunica.fhir.HookFeedback;
import org.tunica.fhir.HookRequest;
import org.tunica.fhir.HookService;
import org.tunica.store.Actor;
import org.tunica.store.FeedbackBook;
import org.tunica.store.Store;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * CDS Hooks 2.0: what is offered, the calls, and what people did with the cards. Of a call nothing is stored; with what a person
 * did with a card goes which rules it rested on.
 */
@RestController
@RequestMapping("/cds-services")
final class HookController {
    private static final String BODY = "body";

    private final Optional<HookService> service;
    private final Store store;
    private final Clock clock;
    private final GivenCards givenCards;

    HookController(RecordServices services, Store store, Clock clock) {
        this.service = services.hooks();
        this.store = store;
        this.clock = clock;
        this.givenCards = new GivenCards();
    }

    /** What is offered; nothing where the site has not said what its room holds. */
    @GetMapping
    ResponseEntity<String> discovery() {
        return json(HttpStatus.OK, service.map(HookService::discovery).orElseGet(() -> {
            ObjectNode none = JsonNodeFactory.instance.objectNode();
            none.putArray("services");
            return none;
        }));
    }

    /** Cards for a moment in the work of a person. */
    @PostMapping(path = "/{id}", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<String> call(@PathVariable String id, @RequestBody byte[] json) {
        HookService known = known(id);
        HookAnswer answer = known.answer(
                HookRequest.read(BODY, json), day(), () -> UUID.randomUUID().toString());
        givenCards.remember(answer.body());
        return json(
                answer instanceof HookAnswer.MissingData ? HttpStatus.PRECONDITION_FAILED : HttpStatus.OK,
                answer.body());
    }

    /** What people did with cards; the same report twice is kept once. */
    @PostMapping(path = "/{id}/feedback", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<Void> feedback(@PathVariable String id, @RequestBody byte[] json, Authentication caller) {
        known(id);
        HookFeedback feedback = HookFeedback.read(BODY, json);
        Actor actor = new Actor("hook:" + caller.getName());
        FeedbackBook book = store.feedback();
        store.together(() -> {
            feedback.entries().forEach(entry -> {
                givenCards.of(entry.card()).ifPresent(card -> store.cards().keep(actor, card));
                book.keep(actor, kept(entry));
            });
            return feedback.entries().size();
        });
        return ResponseEntity.ok().build();
    }

    private static org.tunica.store.HookFeedback kept(HookFeedback.Entry entry) {
        String body = new HookFeedback(List.of(entry)).toJson().toString();
        return new org.tunica.store.HookFeedback(
                HookService.id(), entry.card(), entry.outcome().word(), entry.at(), body);
    }

    private HookService known(String id) {
        return service.filter(any -> id.equals(HookService.id()))
                .orElseThrow(
                        () -> new ResponseStatusException(HttpStatus.NOT_FOUND, "there is no service of that name"));
    }

    private LocalDate day() {
        return LocalDate.ofInstant(clock.instant(), ZoneId.systemDefault());
    }

    private static ResponseEntity<String> json(HttpStatus status, ObjectNode body) {
        return ResponseEntity.status(status)
                .contentType(MediaType.APPLICATION_JSON)
                .body(body.toString());
    }
}
