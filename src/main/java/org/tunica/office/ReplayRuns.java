package org.tunica.office;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
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
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.frame.ForPeople;
import org.tunica.frame.NotThere;
import org.tunica.frame.Pages;
import org.tunica.frame.Reader;
import org.tunica.knowledge.Bundle;
import org.tunica.releases.HandedIn;
import org.tunica.replay.ReplayRequest;
import org.tunica.store.Act;
import org.tunica.store.Subject;
import org.tunica.workroom.Draft;
import org.tunica.workroom.ReplayReading;

/** Replays of changes, begun here and read here. */
@ForPeople
@RestController
final class ReplayRuns {
    private static final long SEED = 1;
    private static final long MOST_INVENTED = 100_000;
    private static final String PATH = "/governance/changes/";

    private final Pages pages;
    private final Desks desks;
    private final OneChange oneChange;

    ReplayRuns(Pages pages, Desks desks) {
        this.pages = pages;
        this.desks = desks;
        this.oneChange = new OneChange(pages, desks);
    }

    /** Begins a replay of a change. */
    @PostMapping(path = "/governance/changes/{number}/replay", produces = Pages.HTML)
    ResponseEntity<String> begin(
            @PathVariable String number,
            @RequestParam(defaultValue = "0") String invented,
            HttpServletRequest request,
            Authentication who) {
        Reader reader = Reader.of(who);
        try {
            ReplayRequest.Invented made = new ReplayRequest.Invented(SEED, count(invented));
            desks.replays()
                    .begin(
                            reader.actor(),
                            number,
                            desks.inForce().tunica(),
                            new ChangeView(desks).sides(proposed(number)),
                            made);
            return Answers.seeOther(PATH + number + "#replay");
        } catch (FaultyInput e) {
            return Answers.refused(
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    oneChange.page(number, request, reader, OneChange.Typed.NOTHING, Answers.lines(e)));
        }
    }

    private static long count(String typed) {
        if (!typed.strip().matches("\\d{1,6}") || Long.parseLong(typed.strip()) > MOST_INVENTED) {
            throw new FaultyInput(
                    "replay", List.of(new Fault("made-up cases", "must be a number from 0 to " + MOST_INVENTED)));
        }
        return Long.parseLong(typed.strip());
    }

    /** What the replay of a change found. */
    @GetMapping(path = "/governance/changes/{number}/replay", produces = Pages.HTML)
    String read(@PathVariable String number, HttpServletRequest request, Authentication who) {
        String json = desks.replays()
                .finished(new ChangeView(desks).sides(proposed(number)))
                .orElseThrow(() -> new NotThere("replay of exactly these rules"));
        desks.store().audit().note(Reader.of(who).actor(), Act.VIEWED, new Subject("replay", number));
        return pages.written(
                "replay.jte",
                new ReplayPage(
                        pages.frame("Replay of change " + number, request),
                        "change " + number,
                        PATH + number,
                        ReplayReading.of(json),
                        List.of("A release is built with exactly this replay; a reviewer acknowledges it there.")));
    }

    private Bundle proposed(String number) {
        ChangeView view = new ChangeView(desks);
        Optional<Draft> draft = desks.workroom().draft(number);
        Optional<HandedIn> handedIn = view.known(number);
        return oneChange
                .proposed(
                        view,
                        number,
                        draft,
                        handedIn,
                        draft.map(desks.workroom()::faults).orElse(List.of()))
                .orElseThrow(() -> new NotThere("change that loads"));
    }

    /** Follows a replay without loading the page anew; the page works without it. */
    @GetMapping("/governance/follow.js")
    ResponseEntity<byte[]> script() {
        try (InputStream in = ReplayRuns.class.getResourceAsStream("/web/follow.js")) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its file web/follow.js");
            }
            return ResponseEntity.ok()
                    .contentType(MediaType.valueOf("text/javascript;charset=UTF-8"))
                    .body(in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
