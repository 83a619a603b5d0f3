package org.tunica.couch;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.Authentication;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.Tunica;
import org.tunica.frame.ForPeople;
import org.tunica.frame.NotThere;
import org.tunica.frame.OpenCases;
import org.tunica.frame.Pages;
import org.tunica.frame.Reader;
import org.tunica.plan.Advice;
import org.tunica.plan.AdviceSoFar;
import org.tunica.plan.OptionAdvice;
import org.tunica.store.KeptCase;
import org.tunica.store.Role;
import org.tunica.store.Store;

/** The advice for a kept case, and what is chosen of it. */
@RestController
@ForPeople
final class AdvicePages {
    /** How soon a page that is not whole is asked for again, by the browser itself. */
    private static final String SOON_SECONDS = "2";

    private final Pages pages;
    private final Store store;
    private final OpenCases cases;
    private final AdviceShelf shelf;
    private final ChoiceForms forms;
    private final ChoiceDesk desk;

    AdvicePages(Pages pages, Tunica tunica, Store store, OpenCases cases, AdviceShelf shelf, Clock clock) {
        this.pages = pages;
        this.store = store;
        this.cases = cases;
        this.shelf = shelf;
        this.forms = new ChoiceForms(store, tunica.knowledge());
        this.desk = new ChoiceDesk(store, clock);
    }

    /** The advice for the latest version of a case, as much as there is of it soon. */
    @GetMapping(path = "/cases/{caseRef}", produces = Pages.HTML)
    ResponseEntity<String> advice(@PathVariable String caseRef, HttpServletRequest request, Authentication who) {
        KeptCase kept = cases.looked(caseRef, who);
        AdviceShelf.Shown shown = shelf.soon(kept);
        ResponseEntity.BodyBuilder answer = ResponseEntity.ok();
        if (!shown.isWhole()) {
            answer.header("Refresh", SOON_SECONDS);
        }
        return answer.body(page(request, who, kept, shown, forms.of(caseRef, shown)));
    }

    /** Chooses for a segment, on the advice for a version. */
    @PostMapping(path = "/cases/{caseRef}/choices/{segment}", produces = Pages.HTML)
    ResponseEntity<String> choose(
            @PathVariable String caseRef,
            @PathVariable String segment,
            @RequestParam(defaultValue = "0") long seen,
            @RequestParam(defaultValue = "") String technique,
            @RequestParam(defaultValue = "") String reason,
            @RequestParam(defaultValue = "") String words,
            HttpServletRequest request,
            Authentication who) {
        KeptCase kept = store.cases().version(caseRef, seen).orElseThrow(() -> new NotThere("version of a case"));
        AdviceShelf.Shown shown = shelf.whole(kept);
        Advice advice = shown.soFar().orElseThrow().advice();
        List<OptionAdvice> ranked = advice.segments().stream()
                .filter(one -> one.ref().equals(segment))
                .map(ChoiceForms::ranked)
                .filter(options -> !options.isEmpty())
                .findFirst()
                .orElseThrow(() -> new NotThere("choice"));
        ChoiceForm.Sent sent = new ChoiceForm.Sent(technique, reason, words.strip());
        List<String> faults = ChoiceForm.faults(ranked, forms.reasons(), sent);
        if (!faults.isEmpty()) {
            ChoiceForm refused =
                    ChoiceForm.of(segment, ranked, forms.reasons(), forms.told(caseRef, shown, segment), sent, faults);
            Map<String, ChoiceForm> choices = new HashMap<>(forms.of(caseRef, shown));
            choices.put(segment, refused);
            return ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT)
                    .body(page(request, who, kept, shown, choices));
        }
        Choice choice = ChoiceForm.choice(
                segment, ranked, forms.reasons(), sent, desk.card(caseRef, segment, advice, ranked.get(0)));
        desk.keep(
                Reader.of(who).actor(), kept, advice, ranked.get(0), choice, ChoiceForm.reason(forms.reasons(), sent));
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header("Location", "/cases/" + caseRef + "#" + segment)
                .build();
    }

    private String page(
            HttpServletRequest request,
            Authentication who,
            KeptCase kept,
            AdviceShelf.Shown shown,
            Map<String, ChoiceForm> choices) {
        return pages.written(
                "advice.jte",
                new CasePage(
                        pages.frame("Case " + kept.caseRef(), request),
                        CaseLine.of(kept, DemoCases.invented(store.cases(), kept)),
                        Reader.of(who).is(Role.SPECIALIST),
                        shown.view(),
                        shown.isWhole(),
                        shown.soFar().map(AdviceSoFar::awaited).orElse(List.of()),
                        CasePapers.of(store, kept.caseRef()),
                        choices));
    }
}
