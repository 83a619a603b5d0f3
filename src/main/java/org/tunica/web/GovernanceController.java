package org.tunica.web;

import java.security.Principal;
import java.time.Clock;
import java.util.List;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.casefile.FaultyInput;
import org.tunica.frame.NotThere;
import org.tunica.releases.ChangeDesk;
import org.tunica.releases.Engines;
import org.tunica.releases.HandedIn;
import org.tunica.releases.JudgeDesk;
import org.tunica.releases.Program;
import org.tunica.releases.ReleaseRecords;
import org.tunica.releases.WatchDesk;
import org.tunica.store.Act;
import org.tunica.store.Actor;
import org.tunica.store.HookFeedback;
import org.tunica.store.Store;
import org.tunica.store.Subject;

/** Changes that were handed in, the rules in use, and what was done with cards, for those who govern the rules. */
@RestController
@RequestMapping(path = "/api/governance", produces = MediaType.APPLICATION_JSON_VALUE)
final class GovernanceController {
    private final Store store;
    private final ChangeDesk changes;
    private final WatchDesk watch;
    private final JudgeDesk judges;

    GovernanceController(Store store, Clock clock) {
        this.store = store;
        Engines engines = new Engines(new ReleaseRecords(store), clock, Program.running());
        this.changes = new ChangeDesk(store, engines);
        this.watch = new WatchDesk(store, engines, clock);
        this.judges = new JudgeDesk(store);
    }

    /** Every change that was handed in, the one that moved last first. */
    @GetMapping("/changes")
    List<ChangeLine> changes() {
        return changes.all().stream().map(ChangeLine::of).toList();
    }

    /** A change with its checks, {@code tunica-change-check/1}, byte for byte as it was handed in. */
    @GetMapping("/changes/{number}")
    String change(@PathVariable String number, Principal who) {
        String document = known(number).document();
        store.audit().note(actor(who), Act.VIEWED, new Subject("change", number));
        return document;
    }

    /** Takes a change back; its author does. */
    @PostMapping(path = "/changes/{number}/withdrawal", consumes = MediaType.APPLICATION_JSON_VALUE)
    ChangeLine withdraw(@PathVariable String number, @RequestBody byte[] json, Principal who) {
        String reason = Said.read(json).because();
        if (!known(number).author().equals(who.getName())) {
            throw Said.fault("change " + number, "is taken back by its author, and by nobody else");
        }
        return ChangeLine.of(changes.withdraw(actor(who), number, reason));
    }

    private HandedIn known(String number) {
        try {
            return changes.one(number);
        } catch (FaultyInput e) {
            throw new NotThere("change");
        }
    }

    /** A look at the rules in use, {@code tunica-watch/1}. */
    @GetMapping("/watch")
    String watch(
            @RequestParam(defaultValue = "30") int days, @RequestParam(defaultValue = "90") int before, Principal who) {
        return watch.look(actor(who), days, before).toJson();
    }

    /** What people did with cards, the last one first; nothing of what they wrote in their own words. */
    @GetMapping("/feedback")
    List<FeedbackLine> feedback() {
        return watch.feedback(kept -> true).stream()
                .map(kept -> FeedbackLine.of(store, kept.feedback()))
                .toList();
    }

    /** Says of the last report of a card whether it was right. */
    @PostMapping(path = "/feedback/{card}/judgements", consumes = MediaType.APPLICATION_JSON_VALUE)
    FeedbackLine judge(@PathVariable String card, @RequestBody byte[] json, Principal who) {
        Said said = Said.readFinding(json);
        HookFeedback report = judges.lastOf(card);
        judges.judge(actor(who), who.getName(), report, said.found().orElseThrow(), said.because());
        return FeedbackLine.of(store, report);
    }

    private static Actor actor(Principal who) {
        return new Actor(who.getName());
    }
}
