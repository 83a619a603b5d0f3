package org.tunica.office;

import jakarta.servlet.http.HttpServletRequest;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
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
import org.tunica.frame.NotThere;
import org.tunica.frame.Pages;
import org.tunica.frame.Reader;
import org.tunica.releases.ReleaseDesk;
import org.tunica.store.Actor;

/** What is done with a release: first a page that says what will follow, then the act. */
@ForPeople
@RestController
final class ReleaseActs {
    private static final String PATH = "/governance/releases/";

    private final Pages pages;
    private final Desks desks;
    private final ConfirmView confirming;

    ReleaseActs(Pages pages, Desks desks) {
        this.pages = pages;
        this.desks = desks;
        this.confirming = new ConfirmView(pages, desks);
    }

    /** What somebody said to an act. */
    record Typed(String reason, String when) {}

    /** Says what will follow. */
    @GetMapping(path = "/governance/releases/{version}/acts/{act}", produces = Pages.HTML)
    String confirm(@PathVariable String version, @PathVariable String act, HttpServletRequest request) {
        return pages.written(
                "confirm.jte", confirming.page(version, known(act), request, List.of(), new Typed("", "")));
    }

    @PostMapping(path = "/governance/releases/{version}/by-author/{act}", produces = Pages.HTML)
    ResponseEntity<String> byAuthor(
            @PathVariable String version,
            @PathVariable String act,
            @RequestParam(defaultValue = "") String reason,
            HttpServletRequest request,
            Authentication who) {
        Reader reader = Reader.of(who);
        return tried(version, of(act, ReleaseAct.Hand.AUTHOR), new Typed(reason, ""), request, () -> {
            if (!new ReleaseView(desks).manifest(version).authors().contains(reader.name())) {
                throw fault(
                        "release " + version,
                        "is moved by those who wrote it: "
                                + String.join(
                                        ", ",
                                        new ReleaseView(desks).manifest(version).authors()));
            }
            act(version, of(act, ReleaseAct.Hand.AUTHOR), reader.actor(), new Typed(reason, ""));
        });
    }

    @PostMapping(path = "/governance/releases/{version}/by-lead/{act}", produces = Pages.HTML)
    ResponseEntity<String> byLead(
            @PathVariable String version,
            @PathVariable String act,
            @RequestParam(defaultValue = "") String reason,
            @RequestParam(defaultValue = "") String when,
            HttpServletRequest request,
            Authentication who) {
        ReleaseAct known = of(act, ReleaseAct.Hand.LEAD);
        Typed typed = new Typed(reason, when);
        return tried(
                version,
                known,
                typed,
                request,
                () -> act(version, known, Reader.of(who).actor(), typed));
    }

    @PostMapping(path = "/governance/releases/{version}/by-either/{act}", produces = Pages.HTML)
    ResponseEntity<String> byEither(
            @PathVariable String version,
            @PathVariable String act,
            @RequestParam(defaultValue = "") String reason,
            HttpServletRequest request,
            Authentication who) {
        ReleaseAct known = of(act, ReleaseAct.Hand.EITHER);
        Typed typed = new Typed(reason, "");
        return tried(
                version,
                known,
                typed,
                request,
                () -> act(version, known, Reader.of(who).actor(), typed));
    }

    private ResponseEntity<String> tried(
            String version, ReleaseAct act, Typed typed, HttpServletRequest request, Runnable work) {
        try {
            work.run();
            return Answers.seeOther(PATH + version);
        } catch (FaultyInput e) {
            return Answers.refused(
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    pages.written("confirm.jte", confirming.page(version, act, request, Answers.lines(e), typed)));
        }
    }

    private void act(String version, ReleaseAct act, Actor by, Typed typed) {
        ReleaseDesk desk = desks.releases();
        switch (act) {
            case SUBMISSION -> desk.submit(by, version);
            case WITHDRAWAL -> desk.withdraw(by, version, typed.reason());
            case REFUSAL -> desk.refuse(by, version, typed.reason());
            case ACTIVATION -> desk.activate(by, version);
            case SCHEDULE -> desk.schedule(by, version, moment(typed.when()));
            case SHADOW -> desk.shadow(by, version);
            case SHADOW_END -> desk.endShadow(by, version);
            case REVIEW -> desk.reviewed(by, version, day(typed.when()), typed.reason());
            case RETIREMENT -> desk.retire(by, version, typed.reason());
            case ROLLBACK -> rollBack(desk, by, version, typed.reason());
        }
    }

    /** The desk rolls back whatever is in force; the person saw one release on the page. */
    private void rollBack(ReleaseDesk desk, Actor by, String version, String reason) {
        desks.store().together(() -> {
            if (!new ReleaseView(desks).inForce(version)) {
                throw fault("release " + version, "is not in force any more; look again before you roll anything back");
            }
            return desk.rollBack(by, reason);
        });
    }

    private static Instant moment(String typed) {
        try {
            return LocalDateTime.parse(typed).toInstant(ZoneOffset.UTC);
        } catch (DateTimeException e) {
            throw fault("moment", "must be a day and a time, UTC, such as 2026-03-01T08:00");
        }
    }

    private static LocalDate day(String typed) {
        try {
            return LocalDate.parse(typed);
        } catch (DateTimeException e) {
            throw fault("next review", "must be a day such as 2027-03-01");
        }
    }

    private static ReleaseAct known(String word) {
        return ReleaseAct.of(word).orElseThrow(() -> new NotThere("act"));
    }

    private static ReleaseAct of(String word, ReleaseAct.Hand hand) {
        return ReleaseAct.of(word).filter(act -> act.hand() == hand).orElseThrow(() -> new NotThere("act"));
    }

    private static FaultyInput fault(String place, String says) {
        return new FaultyInput("release", List.of(new Fault(place, says)));
    }
}
