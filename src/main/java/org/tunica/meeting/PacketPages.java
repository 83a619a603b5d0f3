package org.tunica.meeting;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.Authentication;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.Tunica;
import org.tunica.frame.ForPeople;
import org.tunica.frame.Pages;
import org.tunica.frame.Reader;
import org.tunica.frame.SaysPage;

/** The packet of a case on a page and on paper, and the day it is set for. */
@RestController
@ForPeople
final class PacketPages {
    private static final String AT = "/meeting/packets/{meetingId}";

    private final Pages pages;
    private final Tunica tunica;
    private final MeetingBoard board;
    private final Packets packets;

    PacketPages(Pages pages, Tunica tunica, MeetingBoard board, Packets packets) {
        this.pages = pages;
        this.tunica = tunica;
        this.board = board;
        this.packets = packets;
    }

    /** All the meeting needs to know of a case. */
    @GetMapping(path = AT, produces = Pages.HTML)
    String packet(@PathVariable String meetingId, HttpServletRequest request, Authentication who) {
        Waiting waiting = packets.looked(meetingId, who);
        return pages.written(
                "packet.jte",
                new PacketPage(
                        pages.frame("Meeting case " + meetingId, request),
                        meetingId,
                        packets.of(waiting).document(),
                        packets.version(waiting) != waiting.caseVersion(),
                        waiting.referral().date().orElse(""),
                        waiting.decided()
                                .map(kept -> DecisionWords.ofPacket(
                                        Decision.read(kept.document().body()), tunica.pastCases()::scrubbed))
                                .orElse(List.of())));
    }

    /** The same as PDF. */
    @GetMapping(path = AT + "/pdf", produces = MediaType.APPLICATION_PDF_VALUE)
    byte[] pdf(@PathVariable String meetingId, Authentication who) {
        Waiting waiting = packets.looked(meetingId, who);
        return tunica.toPdf(packets.of(waiting).document());
    }

    /** Sets the day of the meeting, or takes the case off the list. */
    @PostMapping(path = AT + "/date", produces = Pages.HTML)
    ResponseEntity<String> schedule(
            @PathVariable String meetingId,
            @RequestParam(defaultValue = "") String date,
            @RequestParam(defaultValue = "") String takeBack,
            HttpServletRequest request,
            Authentication who) {
        Waiting waiting = packets.waiting(meetingId);
        List<String> faults = new ArrayList<>();
        Optional<String> day = Day.read("Date of the meeting", date, faults);
        if (!waiting.open()) {
            faults.add("This case no longer waits; send it again from its page.");
        }
        if (!faults.isEmpty()) {
            return ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT)
                    .body(pages.says(new SaysPage(
                            pages.frame("That did not work", request),
                            faults,
                            List.of(new SaysPage.Way("/meeting/packets/" + meetingId, "Back to the packet")))));
        }
        if (takeBack.isEmpty()) {
            board.schedule(Reader.of(who).actor(), waiting, day);
        } else {
            board.takeBack(Reader.of(who).actor(), waiting);
        }
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header("Location", takeBack.isEmpty() ? "/meeting/packets/" + meetingId : "/meeting")
                .build();
    }
}
