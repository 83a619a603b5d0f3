package org.tunica.office;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.Authentication;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.casefile.FaultyInput;
import org.tunica.frame.ForPeople;
import org.tunica.frame.NotThere;
import org.tunica.frame.Pages;
import org.tunica.frame.Reader;
import org.tunica.governance.Manifest;
import org.tunica.governance.ReleaseFiles;
import org.tunica.governance.SignOff;
import org.tunica.governance.SignedRelease;
import org.tunica.governance.Story;
import org.tunica.governance.Timeline;
import org.tunica.store.Act;
import org.tunica.store.Role;
import org.tunica.store.Subject;
import org.tunica.workroom.ReplayReading;

/** Releases: all of them, one of them, what its replay found, and the signatures under it. */
@ForPeople
@RestController
final class ReleasePages {
    private static final String PATH = "/governance/releases/";

    private final Pages pages;
    private final Desks desks;

    ReleasePages(Pages pages, Desks desks) {
        this.pages = pages;
        this.desks = desks;
    }

    /** Every release, and what is in force. */
    @GetMapping(path = "/governance/releases", produces = Pages.HTML)
    String all(HttpServletRequest request, Authentication who) {
        ReleaseView view = new ReleaseView(desks);
        Timeline timeline = view.timeline();
        List<Story> stories = new ArrayList<>(timeline.stories());
        Collections.reverse(stories);
        Optional<String> inForce = timeline.inForceAt(desks.moment());
        boolean back = inForce.flatMap(version -> timeline.inForceWithout(version, desks.moment()))
                .isPresent();
        return pages.written(
                "releases.jte",
                new ReleasesPage(
                        pages.frame("Releases", request),
                        inForce.map(version -> "Release " + version + " is in force.")
                                .orElse("No release is in force: every output says DRAFT."),
                        stories.stream()
                                .flatMap(story -> story
                                        .scheduledAt(desks.moment())
                                        .map(from ->
                                                "Release " + story.version() + " comes into force at " + from + ".")
                                        .stream())
                                .toList(),
                        timeline
                                .shadowAt(desks.moment())
                                .map(version -> "Release " + version + " runs silently beside.")
                                .stream()
                                .toList(),
                        stories.stream().map(view::row).toList(),
                        back && ReleaseAct.ROLLBACK.hand().has(roles(Reader.of(who)))));
    }

    /** One release. */
    @GetMapping(path = "/governance/releases/{version}", produces = Pages.HTML)
    String one(@PathVariable String version, HttpServletRequest request, Authentication who) {
        Story story = story(version);
        desks.store().audit().note(Reader.of(who).actor(), Act.VIEWED, new Subject("release", version));
        return pages.written("release.jte", page(story, request, Reader.of(who), List.of(), ""));
    }

    /** What its replay found. */
    @GetMapping(path = "/governance/releases/{version}/replay", produces = Pages.HTML)
    String replay(@PathVariable String version, HttpServletRequest request, Authentication who) {
        Story story = story(version);
        SignedRelease release = desks.records().release(version);
        desks.store().audit().note(Reader.of(who).actor(), Act.VIEWED, new Subject("replay", version));
        String stale = new ReleaseView(desks).stale(story, release);
        List<String> notes = new ArrayList<>();
        notes.add("Whoever acknowledges it signs the digest "
                + release.files().manifest().replay() + ".");
        if (!stale.isEmpty()) {
            notes.add(stale);
        }
        return pages.written(
                "replay.jte",
                new ReplayPage(
                        pages.frame("Replay of release " + version, request),
                        "release " + version,
                        PATH + version,
                        ReplayReading.of(release.files().text(ReleaseFiles.REPLAY)),
                        notes));
    }

    /** Takes the signature of whoever is signed in. */
    @PostMapping(path = "/governance/releases/{version}/signatures", produces = Pages.HTML)
    ResponseEntity<String> sign(
            @PathVariable String version,
            @RequestParam(defaultValue = "") String signature,
            HttpServletRequest request,
            Authentication who) {
        Story story = story(version);
        Reader reader = Reader.of(who);
        try {
            desks.signing().take(version, reader.name(), signature.strip().getBytes(StandardCharsets.UTF_8));
            return Answers.seeOther(PATH + version);
        } catch (FaultyInput e) {
            ReleasePage page = page(story, request, reader, Answers.lines(e), signature);
            return Answers.refused(HttpStatus.UNPROCESSABLE_CONTENT, pages.written("release.jte", page));
        }
    }

    private ReleasePage page(
            Story story, HttpServletRequest request, Reader reader, List<String> faults, String typed) {
        String version = story.version();
        ReleaseView view = new ReleaseView(desks);
        SignedRelease release = desks.records().release(version);
        Manifest manifest = release.files().manifest();
        SignOff signOff = desks.records().signOff(manifest);
        return new ReleasePage(
                pages.frame("Release " + version, request),
                version,
                view.state(story),
                view.facts(story, manifest),
                Signers.signed(signOff),
                ReleaseView.faults(signOff.uncounted()),
                signOff.missing(),
                new Signers(desks).maySign(manifest),
                story.steps().stream().map(ReleaseView::step).toList(),
                view.shadow(version),
                ReleaseView.contents(manifest),
                manifest.leftOut(),
                view.stale(story, release),
                new Signers(desks).asks(story, manifest, reader.name(), roles(reader)),
                acts(story, manifest, reader, view),
                faults,
                typed);
    }

    private List<ReleasePage.Act> acts(Story story, Manifest manifest, Reader reader, ReleaseView view) {
        return Arrays.stream(ReleaseAct.values())
                .filter(act -> act.in(story.stateAt(desks.moment())))
                .filter(act -> act.hand().has(roles(reader)))
                .filter(act -> act.hand() != ReleaseAct.Hand.AUTHOR
                        || manifest.authors().contains(reader.name()))
                .filter(act -> act != ReleaseAct.ROLLBACK || view.inForce(story.version()))
                .filter(act -> act != ReleaseAct.RETIREMENT || !view.inForce(story.version()))
                .filter(act -> act != ReleaseAct.SHADOW || !story.shadowAt(desks.moment()))
                .filter(act -> act != ReleaseAct.SHADOW_END || story.shadowAt(desks.moment()))
                .map(act -> new ReleasePage.Act(act.says(), PATH + story.version() + "/acts/" + act.word()))
                .toList();
    }

    private Story story(String version) {
        return desks.records().timeline().story(version).orElseThrow(() -> new NotThere("release"));
    }

    static Set<Role> roles(Reader reader) {
        Set<Role> roles = EnumSet.noneOf(Role.class);
        Arrays.stream(Role.values()).filter(reader::is).forEach(roles::add);
        return roles;
    }
}
