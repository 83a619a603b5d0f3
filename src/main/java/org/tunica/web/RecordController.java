package org.tunica.web;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
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
import org.tunica.fhir.RecordService;
import tools.jackson.databind.node.ObjectNode;

/** Operations on a patient's record in FHIR R4. Nothing is stored. */
@RestController
@RequestMapping("/fhir")
final class RecordController {
    private final RecordServices services;
    private final Clock clock;

    RecordController(RecordServices services, Clock clock) {
        this.services = services;
        this.clock = clock;
    }

    /** What is there. */
    @GetMapping("/metadata")
    ResponseEntity<String> metadata() {
        return fhir(services.capabilities().statement());
    }

    /** What an operation takes and gives. */
    @GetMapping("/OperationDefinition/{id}")
    ResponseEntity<String> definition(@PathVariable String id) {
        return fhir(services.capabilities().definition(id).orElseThrow(RecordController::unknown));
    }

    /** The advice for a record. */
    @PostMapping(
            path = "/$closure-advice",
            consumes = {Refusals.FHIR_JSON, MediaType.APPLICATION_JSON_VALUE})
    ResponseEntity<String> advice(@RequestBody byte[] record, Authentication caller) {
        return fhir(service().advice(record, sending(caller)));
    }

    /** How a record is understood. */
    @PostMapping(
            path = "/$closure-case",
            consumes = {Refusals.FHIR_JSON, MediaType.APPLICATION_JSON_VALUE})
    ResponseEntity<String> asCase(@RequestBody byte[] record, Authentication caller) {
        return fhir(service().asCase(record, sending(caller)));
    }

    private RecordService service() {
        return services.records().orElseThrow(RecordController::unknown);
    }

    private RecordService.Sending sending(Authentication caller) {
        Instant at = clock.instant();
        LocalDate day = LocalDate.ofInstant(at, ZoneId.systemDefault());
        return new RecordService.Sending(
                caller.getName(), at, day, () -> UUID.randomUUID().toString());
    }

    private static ResponseStatusException unknown() {
        return new ResponseStatusException(HttpStatus.NOT_FOUND, "there is nothing of that name");
    }

    private static ResponseEntity<String> fhir(ObjectNode resource) {
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType(Refusals.FHIR_JSON))
                .body(resource.toString());
    }
}
