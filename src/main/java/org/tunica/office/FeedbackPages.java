package org.tunica.office;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
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
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.frame.ForPeople;
import org.tunica.frame.Pages;
import org.tunica.frame.Reader;
import org.tunica.knowledge.Knowledge;
import org.tunica.releases.WatchDesk;
import org.tunica.store.FeedbackBook;
import org.tunica.store.GivenCard;
import org.tunica.store.HookFeedback;
import org.tunica.store.Judgement;
import org.tunica.store.Role;

/** Cards that were set aside, why, and whether that was right. */
@ForPeople
@RestController
final class FeedbackPages {
    private static final List<Role> JUDGES =
            List.of(Role.SPECIALIST, Role.MEETING_MEMBER, Role.CLINICAL_LEAD, Role.SAFETY_OFFICER);

    private final Pages pages;
    private final Desks desks;

    FeedbackPages(Pages pages, Desks desks) {
        this.pages = pages;
        this.desks = desks;
    }

    /** Every report, the last one first. */
    @GetMapping(path = "/governance/feedback", produces = Pages.HTML)
    String all(HttpServletRequest request, Authentication who) {
        return pages.written("feedback.jte", page(request, who, List.of(), Optional.empty()));
    }

    /** Keeps what somebody finds of the last report of a card. */
    @PostMapping(path = "/governance/feedback/{card}", produces = Pages.HTML)
    ResponseEntity<String> judge(
            @PathVariable String card,
            @RequestParam(defaultValue = "") String found,
            @RequestParam(defaultValue = "") String because,
            HttpServletRequest request,
            Authentication who) {
        Reader reader = Reader.of(who);
        try {
            desks.judges().judge(reader.actor(), reader.name(), desks.judges().lastOf(card), finding(found), because);
            return Answers.seeOther("/governance/feedback");
        } catch (FaultyInput e) {
            FeedbackPage page =
                    page(request, who, Answers.lines(e), Optional.of(new FeedbackPage.Typed(card, found, because)));
            return Answers.refused(HttpStatus.UNPROCESSABLE_CONTENT, pages.written("feedback.jte", page));
        }
    }

    private static Judgement.Finding finding(String word) {
        return Arrays.stream(Judgement.Finding.values())
                .filter(one -> one.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new FaultyInput(
                        "feedback", List.of(new Fault("finding", "must be chosen: was it right or not"))));
    }

    private FeedbackPage page(
            HttpServletRequest request, Authentication who, List<String> faults, Optional<FeedbackPage.Typed> typed) {
        Knowledge knowledge = desks.inForce().tunica().knowledge();
        List<FeedbackPage.Line> lines = desks.watch().feedback(kept -> true).stream()
                .map(kept -> line(kept.feedback(), knowledge))
                .toList();
        boolean may = JUDGES.stream().anyMatch(Reader.of(who)::is);
        return new FeedbackPage(pages.frame("What was done with cards", request), may, lines, faults, typed);
    }

    private FeedbackPage.Line line(HookFeedback report, Knowledge knowledge) {
        Optional<GivenCard> card = desks.store().cards().one(report.card());
        String technique = card.map(GivenCard::technique)
                .filter(id -> !id.isEmpty())
                .map(id -> knowledge.techniques().containsKey(id)
                        ? knowledge.technique(id).says()
                        : id)
                .orElse("not recorded");
        return new FeedbackPage.Line(
                report.card(),
                report.outcome(),
                report.outcomeAt().toString(),
                WatchDesk.reason(report).orElse("none given"),
                technique,
                card.map(given -> List.copyOf(given.rules())).orElse(List.of()),
                desks.store().feedback().judgements(report.card(), report.outcome(), report.outcomeAt()).stream()
                        .map(FeedbackPages::finding)
                        .toList());
    }

    private static String finding(FeedbackBook.KeptJudgement kept) {
        Judgement judgement = kept.judgement();
        return judgement.judge() + ", " + kept.stamp().at() + ": "
                + judgement.found().word().replace('-', ' ') + ", because " + judgement.reason();
    }
}
