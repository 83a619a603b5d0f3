package org.tunica.couch;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.JsonText;
import org.tunica.fhir.FhirTranslator;
import org.tunica.fhir.TakenOver;
import org.tunica.frame.ForPeople;
import org.tunica.frame.Pages;
import tools.jackson.databind.JsonNode;

/**
 * Takes a case file or a record of a patient over into the form, where a person completes it. Nothing is saved here, and no
 * file comes to the server: a script of the page reads it into the text.
 */
@RestController
@ForPeople
final class ImportPages {
    private static final String PLACE = "/cases/import";

    /** A record with a name of its own would be refused before the form could ask for one. */
    private static final String UNNAMED = "from-record";

    private static final int MOST_NOTES = 200;

    private final Pages pages;
    private final FormDesk desk;
    private final FhirTranslator translator;
    private final Clock clock;

    ImportPages(Pages pages, FormDesk desk, FhirTranslator translator, Clock clock) {
        this.pages = pages;
        this.desk = desk;
        this.translator = translator;
        this.clock = clock;
    }

    @GetMapping(path = PLACE, produces = Pages.HTML)
    String empty(HttpServletRequest request) {
        return page(request, "", "", List.of());
    }

    /** Opens the form with what could be taken over, and tells what could not. */
    @PostMapping(path = PLACE, produces = Pages.HTML)
    ResponseEntity<String> take(
            @RequestParam(defaultValue = "") String text,
            @RequestParam(defaultValue = "") String caseRef,
            HttpServletRequest request) {
        try {
            JsonNode tree = JsonText.parseRecord("text", text.getBytes(StandardCharsets.UTF_8));
            boolean ours = tree.has("format") || tree.has("limbs");
            return ResponseEntity.ok(ours ? ofCase(request, tree) : ofRecord(request, tree, caseRef.strip()));
        } catch (FaultyInput e) {
            List<String> faults = e.faults().stream().map(Fault::toString).toList();
            return ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT).body(page(request, caseRef, text, faults));
        }
    }

    /** A faulty case opens, too: its faults stand at their fields, and what has no field is told. */
    private String ofCase(HttpServletRequest request, JsonNode tree) {
        List<Fault> faults = desk.faultsOf(tree.toString()).stream()
                .map(fault -> new Fault(fault.place().replaceFirst("^\\$\\.?", ""), fault.says()))
                .toList();
        List<String> notes = List.of("Taken over from a case file; nothing is saved yet."
                + (faults.isEmpty() ? "" : " What has no field in this form will be left out."));
        return desk.page(request, SentForm.fresh(notes, desk.typed(tree)), faults);
    }

    private String ofRecord(HttpServletRequest request, JsonNode record, String caseRef) {
        LocalDate day = LocalDate.ofInstant(clock.instant(), ZoneId.systemDefault());
        String name = caseRef.matches(CaseFile.REFERENCE) ? caseRef : UNNAMED;
        TakenOver taken = translator.takeOver("record", record, day, name);
        Typed typed = desk.typed(taken.tree()).with("caseRef", caseRef);
        Typed open = typed.legs() == 0 ? typed.with(Typed.segment(0, 0) + ".ref", "") : typed;
        return desk.page(request, SentForm.fresh(notes(taken), open), List.of());
    }

    private static List<String> notes(TakenOver read) {
        List<String> all = Stream.concat(
                        read.unused().stream().map(one -> "Not taken over: " + one),
                        read.ages().stream()
                                .map(age -> "Recorded " + (age.when().isEmpty() ? "at an unknown time" : age.when())
                                        + ": " + age.says() + ", " + age.about() + " (" + age.resource() + ")"))
                .toList();
        List<String> notes = new ArrayList<>();
        notes.add("Taken over from a record; nothing is saved yet. Whatever the record does not hold is not recorded.");
        notes.addAll(all.subList(0, Math.min(MOST_NOTES, all.size())));
        if (all.size() > MOST_NOTES) {
            notes.add("And " + (all.size() - MOST_NOTES) + " more of the same.");
        }
        return notes;
    }

    private String page(HttpServletRequest request, String caseRef, String text, List<String> faults) {
        return pages.written(
                "import.jte", new ImportPage(pages.frame("Take a case over", request), caseRef, text, faults));
    }
}
