package org.tunica.web;

import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.Contract;
import org.tunica.Tunica;

/** The contracts of the files over HTTP: what a command prints as JSON, this answers. */
@RestController
@RequestMapping(path = "/api", produces = MediaType.APPLICATION_JSON_VALUE)
final class ApiController {
    private static final String BODY = "body";

    private final Tunica tunica;

    ApiController(Tunica tunica) {
        this.tunica = tunica;
    }

    /** The advice for a case, {@code tunica-case/1} to {@code tunica-advice/1}. */
    @PostMapping(path = "/advice", consumes = MediaType.APPLICATION_JSON_VALUE)
    String advice(@RequestBody byte[] json) {
        return tunica.toJson(tunica.advise(tunica.readCase(BODY, json)));
    }

    /** The plan for a case, {@code tunica-case/1} to {@code tunica-plan/1}. */
    @PostMapping(path = "/plan", consumes = MediaType.APPLICATION_JSON_VALUE)
    String plan(@RequestBody byte[] json) {
        return tunica.toJson(tunica.plan(tunica.readCase(BODY, json)));
    }

    /** The JSON Schema of a contract. */
    @GetMapping("/schemas/{contract}")
    String schema(@PathVariable String contract) {
        return Contract.named(contract).map(tunica::schema).orElseThrow(() -> new UnknownContract(contract));
    }

    /** Nothing is known by that name. */
    static final class UnknownContract extends RuntimeException {
        UnknownContract(String contract) {
            super(contract);
        }
    }
}
