package org.tunica.meeting;

import jakarta.servlet.http.HttpServletRequest;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.Authentication;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.frame.ForPeople;
import org.tunica.frame.OpenCases;
import org.tunica.frame.Pages;
import org.tunica.frame.Reader;
import org.tunica.pastcases.Nameless;

/** Where what a meeting decided is entered. */
@RestController
@ForPeople
final class DecisionPages {
    private static final String AT = "/meeting/packets/{meetingId}/decision";

    private final Pages pages;
    private final OpenCases cases;
    private final MeetingBoard board;
    private final Packets packets;

    DecisionPages(Pages pages, OpenCases cases, MeetingBoard board, Packets packets) {
        this.pages = pages;
        this.cases = cases;
        this.board = board;
        this.packets = packets;
    }

    /** The form, one part for each segment. */
    @GetMapping(path = AT, produces = Pages.HTML)
    String form(@PathVariable String meetingId, HttpServletRequest request, Authentication who) {
        Waiting waiting = packets.looked(meetingId, who);
        Map<String, String> typed = new HashMap<>();
        waiting.referral().date().ifPresent(date -> typed.put("date", date));
        return pages.written("decision.jte", page(form(waiting, typed), meetingId, List.of(), request));
    }

    /** Keeps a decision; one that cannot be kept comes back whole, with every fault. */
    @PostMapping(path = AT, produces = Pages.HTML)
    ResponseEntity<String> decide(
            @PathVariable String meetingId,
            @RequestParam Map<String, String> typed,
            HttpServletRequest request,
            Authentication who) {
        Waiting waiting = packets.waiting(meetingId);
        Packet packet = packets.of(waiting);
        DecisionForm form = form(waiting, packet, typed);
        Optional<Decision> decision = form.read();
        if (decision.isEmpty()) {
            return ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT)
                    .body(pages.written("decision.jte", page(form, meetingId, form.faults(), request)));
        }
        board.decide(
                Reader.of(who).actor(),
                waiting,
                packets.version(waiting),
                decision.get(),
                new HeardOf(packet.advice()));
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header("Location", "/meeting/packets/" + meetingId)
                .build();
    }

    private DecisionForm form(Waiting waiting, Map<String, String> typed) {
        return form(waiting, packets.of(waiting), typed);
    }

    private DecisionForm form(Waiting waiting, Packet packet, Map<String, String> typed) {
        Map<String, String> realNames = new HashMap<>();
        Nameless.names(cases.read(packets.latest(waiting))).forEach((real, shown) -> realNames.put(shown, real));
        return new DecisionForm(packet, realNames, typed);
    }

    private DecisionPage page(DecisionForm form, String meetingId, List<String> faults, HttpServletRequest request) {
        return new DecisionPage(
                pages.frame("Decision on meeting case " + meetingId, request),
                meetingId,
                form.text("date"),
                form.fields(),
                form.text("agreed"),
                form.dissentRows(),
                form.text("owner"),
                form.text("due"),
                faults);
    }
}
