package org.tunica.meeting;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.Authentication;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.couch.DemoCases;
import org.tunica.couch.PastLibrary;
import org.tunica.frame.ForPeople;
import org.tunica.frame.OpenCases;
import org.tunica.frame.Pages;
import org.tunica.frame.Reader;
import org.tunica.store.KeptCase;
import org.tunica.store.KeptDocument;
import org.tunica.store.Store;

/** A case and the meeting: sending it there, and what came back. */
@RestController
@ForPeople
final class ReferPages {
    private static final int LONGEST_QUESTION = 2_000;

    private final Pages pages;
    private final Tunica tunica;
    private final Store store;
    private final OpenCases cases;
    private final MeetingBoard board;
    private final PastLibrary past;

    ReferPages(Pages pages, Tunica tunica, Store store, OpenCases cases, MeetingBoard board, PastLibrary past) {
        this.pages = pages;
        this.tunica = tunica;
        this.store = store;
        this.cases = cases;
        this.board = board;
        this.past = past;
    }

    /** What the rules find, a form to send the case, and decisions on it. */
    @GetMapping(path = "/cases/{caseRef}/meeting", produces = Pages.HTML)
    String form(@PathVariable String caseRef, HttpServletRequest request, Authentication who) {
        KeptCase kept = cases.looked(caseRef, who);
        Optional<Referral> waiting = board.of(caseRef).filter(Waiting::open).map(Waiting::referral);
        Typed typed = new Typed(
                waiting.map(Referral::question).orElse(""),
                waiting.map(Referral::reasons).orElse(List.of()).stream()
                        .map(reason -> reason.replace(' ', '-'))
                        .toList(),
                waiting.flatMap(Referral::date).orElse(""));
        return pages.written("refer.jte", page(kept, typed, List.of(), request));
    }

    /** Sends the case, or changes how it was sent. */
    @PostMapping(path = "/cases/{caseRef}/meeting", produces = Pages.HTML)
    ResponseEntity<String> send(
            @PathVariable String caseRef,
            @RequestParam(defaultValue = "") String question,
            @RequestParam(defaultValue = "") List<String> because,
            @RequestParam(defaultValue = "") String date,
            HttpServletRequest request,
            Authentication who) {
        KeptCase kept = cases.latest(caseRef);
        Typed typed = new Typed(question.strip(), because, date.strip());
        List<String> faults = new ArrayList<>();
        Optional<String> day = Day.read("Date of the meeting", typed.date(), faults);
        List<String> reasons = known(because, faults);
        if (typed.question().isEmpty() && reasons.isEmpty()) {
            faults.add("Why it is sent: pick a reason, write a question, or both.");
        }
        if (typed.question().length() > LONGEST_QUESTION) {
            faults.add("Question: is longer than " + LONGEST_QUESTION + " characters.");
        }
        if (!faults.isEmpty()) {
            return ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT)
                    .body(pages.written("refer.jte", page(kept, typed, faults, request)));
        }
        Waiting sent = board.send(
                Reader.of(who).actor(), kept, tunica.release(), Referral.of("", typed.question(), reasons, day));
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header("Location", "/meeting/packets/" + sent.referral().meetingId())
                .build();
    }

    private record Typed(String question, List<String> because, String date) {}

    private static List<String> known(List<String> because, List<String> faults) {
        List<String> reasons = new ArrayList<>();
        for (String word : because) {
            Arrays.stream(SentBecause.values())
                    .filter(reason -> reason.word().equals(word))
                    .findFirst()
                    .ifPresentOrElse(
                            reason -> reasons.add(word.replace('-', ' ')),
                            () -> faults.add("Why it is sent: \"" + word + "\" is no reason of the list."));
        }
        return reasons;
    }

    private ReferPage page(KeptCase kept, Typed typed, List<String> faults, HttpServletRequest request) {
        CaseFile caseFile = cases.read(kept);
        Signs signs = new Signs(tunica, past.forCase(DemoCases.invented(store.cases(), kept)));
        List<KeptDocument> decisions = new ArrayList<>(board.decisions(kept.caseRef()));
        Collections.reverse(decisions);
        return new ReferPage(
                pages.frame("Case " + kept.caseRef() + " and the meeting", request),
                kept.caseRef(),
                signs.of(caseFile, tunica.advise(caseFile)),
                board.of(kept.caseRef())
                        .filter(Waiting::open)
                        .map(waiting -> waiting.referral().meetingId()),
                Choice.of(SentBecause.class, typed.because()),
                typed.question(),
                typed.date(),
                decisions.stream().map(ReferPages::text).toList(),
                faults);
    }

    private static ReferPage.DecisionText text(KeptDocument kept) {
        Decision decision = Decision.read(kept.document().body());
        return new ReferPage.DecisionText(
                "Decision " + kept.number() + ", meeting of " + decision.date() + ", on version "
                        + kept.document().caseVersion() + " of the case, entered by "
                        + kept.stamp().by(),
                DecisionWords.ofCase(decision));
    }
}
