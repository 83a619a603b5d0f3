package org.tunica.meeting;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.Authentication;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.Tunica;
import org.tunica.couch.DemoCases;
import org.tunica.couch.KeptLine;
import org.tunica.couch.PastLibrary;
import org.tunica.frame.ForPeople;
import org.tunica.frame.NotThere;
import org.tunica.frame.OpenCases;
import org.tunica.frame.Pages;
import org.tunica.frame.Reader;
import org.tunica.store.Act;
import org.tunica.store.KeptCase;
import org.tunica.store.Page;
import org.tunica.store.Store;
import org.tunica.store.Subject;

/** What waits for the meeting, and what it goes through on a day. */
@RestController
@ForPeople
final class QueuePages {
    private static final int LOOKED_AT = 100;
    private static final int DECIDED_SHOWN = 20;

    private final Pages pages;
    private final Tunica tunica;
    private final Store store;
    private final OpenCases cases;
    private final MeetingBoard board;
    private final HardCases hard;
    private final PastLibrary past;

    QueuePages(
            Pages pages,
            Tunica tunica,
            Store store,
            OpenCases cases,
            MeetingBoard board,
            HardCases hard,
            PastLibrary past) {
        this.pages = pages;
        this.tunica = tunica;
        this.store = store;
        this.cases = cases;
        this.board = board;
        this.hard = hard;
        this.past = past;
    }

    /** Cases that were sent, and those of the cases saved last that the rules call hard. */
    @GetMapping(path = "/meeting", produces = Pages.HTML)
    String queue(HttpServletRequest request, Authentication who) {
        store.audit().note(Reader.of(who).actor(), Act.VIEWED, new Subject("meeting", "queue"));
        List<Waiting> all = board.all();
        Set<String> sent = new HashSet<>();
        all.stream().filter(Waiting::open).forEach(waiting -> sent.add(waiting.caseRef()));
        List<QueuePage.FoundLine> found = new ArrayList<>();
        int stillLooking = 0;
        long pastChange = past.lastChange();
        for (KeptCase kept : store.cases().newest(Page.newest(LOOKED_AT))) {
            if (sent.contains(kept.caseRef()) || decidedOn(all, kept)) {
                continue;
            }
            HardCases.Found known = hard.of(kept, pastChange);
            stillLooking += known.looked() ? 0 : 1;
            if (!known.signs().isEmpty()) {
                found.add(new QueuePage.FoundLine(
                        kept.caseRef(), DemoCases.invented(store.cases(), kept), known.signs()));
            }
        }
        return pages.written(
                "meeting.jte",
                new QueuePage(
                        pages.frame("The meeting", request),
                        dates(all),
                        all.stream().filter(Waiting::open).map(this::line).toList(),
                        found,
                        stillLooking,
                        all.stream()
                                .filter(waiting -> waiting.decided().isPresent())
                                .limit(DECIDED_SHOWN)
                                .map(this::line)
                                .toList()));
    }

    /** A case that was decided in the version it has now is not found again. */
    private static boolean decidedOn(List<Waiting> all, KeptCase kept) {
        return all.stream()
                .filter(waiting -> waiting.caseRef().equals(kept.caseRef()))
                .flatMap(waiting -> waiting.decided().stream())
                .anyMatch(decided -> decided.document().caseVersion() == kept.version());
    }

    private static List<QueuePage.DateLine> dates(List<Waiting> all) {
        Map<String, Integer> dates = new TreeMap<>();
        all.stream()
                .filter(Waiting::open)
                .flatMap(waiting -> waiting.referral().date().stream())
                .forEach(date -> dates.merge(date, 1, Integer::sum));
        return dates.entrySet().stream()
                .map(date -> new QueuePage.DateLine(date.getKey(), date.getValue()))
                .toList();
    }

    private QueuePage.WaitingLine line(Waiting waiting) {
        return new QueuePage.WaitingLine(
                waiting.referral().meetingId(),
                waiting.caseRef(),
                waiting.referral().reasons(),
                waiting.referral().date().orElse(""),
                waiting.sent().by() + " at " + KeptLine.minute(waiting.sent()),
                waiting.decided()
                        .map(kept -> kept.stamp().by() + " at " + KeptLine.minute(kept.stamp()))
                        .orElse(""));
    }

    /** What the meeting of a day goes through. */
    @GetMapping(path = "/meeting/agenda/{date}", produces = Pages.HTML)
    ResponseEntity<String> agenda(@PathVariable String date, HttpServletRequest request, Authentication who) {
        if (!Day.valid(date)) {
            throw new NotThere("day");
        }
        store.audit().note(Reader.of(who).actor(), Act.VIEWED, new Subject("meeting", "agenda/" + date));
        List<AgendaPage.Item> items = board.all().stream()
                .filter(waiting -> !waiting.referral().withdrawn())
                .filter(waiting -> waiting.referral().date().equals(Optional.of(date)))
                .sorted(Comparator.comparingLong(waiting -> waiting.sent().auditNumber()))
                .map(this::item)
                .toList();
        return ResponseEntity.status(HttpStatus.OK)
                .body(pages.written(
                        "agenda.jte", new AgendaPage(pages.frame("Agenda of " + date, request), date, items)));
    }

    private AgendaPage.Item item(Waiting waiting) {
        List<String> what = store.cases()
                .latest(waiting.caseRef())
                .map(kept -> tunica.pastCases()
                        .nameless(cases.read(kept), waiting.referral().meetingId())
                        .caseFile())
                .map(nameless -> nameless.limbs().stream()
                        .flatMap(limb -> limb.segments().stream().map(segment -> CaseDescription.title(limb, segment)))
                        .toList())
                .orElse(List.of());
        return new AgendaPage.Item(
                waiting.referral().meetingId(),
                what,
                waiting.referral().reasons(),
                waiting.decided()
                        .map(kept -> DecisionWords.ofPacket(
                                Decision.read(kept.document().body()), tunica.pastCases()::scrubbed))
                        .orElse(List.of()));
    }
}
