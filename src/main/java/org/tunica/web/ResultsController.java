package org.tunica.web;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.Tunica;
import org.tunica.library.Results;
import org.tunica.outcomes.AuditQuestion;

/** Results of the past cases released here, for programs. */
@RestController
final class ResultsController {
    private final Tunica tunica;
    private final Results results;

    ResultsController(Tunica tunica, Results results) {
        this.tunica = tunica;
        this.results = results;
    }

    /** The audit, {@code tunica-audit/1}. */
    @GetMapping(path = "/api/results", produces = MediaType.APPLICATION_JSON_VALUE)
    String results(
            @RequestParam Optional<String> site,
            @RequestParam Optional<String> technique,
            @RequestParam Optional<Integer> from,
            @RequestParam Optional<Integer> to,
            @RequestParam(defaultValue = "") List<String> compare) {
        AuditQuestion question = new AuditQuestion(site, technique, year(from), year(to), compare);
        return tunica.toJson(results.of(question, false).audit());
    }

    private static OptionalInt year(Optional<Integer> year) {
        return year.map(OptionalInt::of).orElse(OptionalInt.empty());
    }
}
