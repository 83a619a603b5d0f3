package org.tunica.office;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.Authentication;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.frame.ForPeople;
import org.tunica.frame.NotThere;
import org.tunica.frame.Pages;
import org.tunica.frame.Reader;
import org.tunica.governance.ReleaseFiles;
import org.tunica.governance.ReleaseIntent;
import org.tunica.governance.ReplayReport;
import org.tunica.governance.SemanticVersion;
import org.tunica.releases.HandedIn;
import org.tunica.workroom.Draft;

/** What an author does with a change. */
@ForPeople
@RestController
final class ChangeActs {
    private static final String PATH = "/governance/changes/";

    private final Desks desks;
    private final OneChange oneChange;

    ChangeActs(Pages pages, Desks desks) {
        this.desks = desks;
        this.oneChange = new OneChange(pages, desks);
    }

    /** Writes the reason into the change record, and lists there what the files changed. */
    @PostMapping(path = "/governance/changes/{number}/reason", produces = Pages.HTML)
    ResponseEntity<String> reason(
            @PathVariable String number,
            @RequestParam(defaultValue = "") String reason,
            HttpServletRequest request,
            Authentication who) {
        Reader reader = Reader.of(who);
        return tried(number, OneChange.Typed.reason(reason), request, reader, () -> {
            if (reason.isBlank() || !reason.matches("[ -~\\r\\n]+")) {
                throw fault("reason", "must be given, in printable ASCII: everything else is refused in these files");
            }
            fill(own(number, reader), Optional.of(reason.strip().replaceAll("\\s*\\R\\s*", " ")));
            return PATH + number;
        });
    }

    /** Hands the change in with its checks. */
    @PostMapping(path = "/governance/changes/{number}/submission", produces = Pages.HTML)
    ResponseEntity<String> submit(@PathVariable String number, HttpServletRequest request, Authentication who) {
        Reader reader = Reader.of(who);
        return tried(number, OneChange.Typed.NOTHING, request, reader, () -> {
            Draft draft = own(number, reader);
            fill(draft, Optional.empty());
            desks.changes().submit(reader.actor(), draft.copy(), desks.checked(draft));
            return PATH + number;
        });
    }

    /** Takes it back. */
    @PostMapping(path = "/governance/changes/{number}/withdrawal", produces = Pages.HTML)
    ResponseEntity<String> withdraw(
            @PathVariable String number,
            @RequestParam(defaultValue = "") String because,
            HttpServletRequest request,
            Authentication who) {
        Reader reader = Reader.of(who);
        return tried(number, OneChange.Typed.NOTHING, request, reader, () -> {
            HandedIn change = new ChangeView(desks).known(number).orElseThrow(() -> new NotThere("change"));
            if (!change.author().equals(reader.name())) {
                throw fault("change " + number, "is taken back by its author, and by nobody else");
            }
            if (because.isBlank()) {
                throw fault("because", "must be given: others will want to know why");
            }
            desks.changes().withdraw(reader.actor(), number, because.strip());
            return PATH + number;
        });
    }

    /** Builds a release of it and keeps it as a draft. */
    @PostMapping(path = "/governance/changes/{number}/release", produces = Pages.HTML)
    ResponseEntity<String> build(
            @PathVariable String number,
            @RequestParam(defaultValue = "") String version,
            @RequestParam(defaultValue = "") String title,
            @RequestParam(defaultValue = "") String effectiveFrom,
            @RequestParam(defaultValue = "") String effectiveTo,
            @RequestParam(defaultValue = "") String reviewBy,
            HttpServletRequest request,
            Authentication who) {
        Reader reader = Reader.of(who);
        ChangePage.Build typed = new ChangePage.Build(version, title, effectiveFrom, effectiveTo, reviewBy);
        OneChange.Typed kept = new OneChange.Typed(Optional.empty(), Optional.of(typed));
        return tried(number, kept, request, reader, () -> {
            ChangeView view = new ChangeView(desks);
            HandedIn change = view.known(number).orElseThrow(() -> new NotThere("change"));
            if (!change.author().equals(reader.name())) {
                throw fault("change " + number, "is built into a release by its author, and by nobody else");
            }
            String replay = desks.replays()
                    .finished(view.sides(view.handedIn(number)))
                    .orElseThrow(() -> fault("replay", "must be run first, of exactly these rules"));
            ReleaseFiles files =
                    desks.press().ofChange(intent(typed, reader.name(), number), number, new ReplayReport(replay));
            desks.releases().keep(reader.actor(), files);
            return "/governance/releases/" + version.strip();
        });
    }

    private static ReleaseIntent intent(ChangePage.Build typed, String author, String number) {
        Faults faults = new Faults();
        Optional<SemanticVersion> version = version(typed.version(), faults);
        Optional<LocalDate> from = day("effective from", typed.effectiveFrom(), faults);
        Optional<LocalDate> to = day("effective to", typed.effectiveTo(), faults);
        Optional<LocalDate> review = day("review by", typed.reviewBy(), faults);
        if (typed.reviewBy().isBlank()) {
            faults.add("review by", "must be given");
        }
        faults.throwIfAny("release");
        return new ReleaseIntent(
                version.orElseThrow(),
                typed.title().strip(),
                List.of(author),
                List.of(number),
                from,
                to,
                review.orElseThrow());
    }

    private static Optional<SemanticVersion> version(String typed, Faults faults) {
        try {
            return Optional.of(SemanticVersion.of(typed.strip()));
        } catch (FaultyInput e) {
            e.faults().forEach(fault -> faults.add(fault.place(), fault.says()));
            return Optional.empty();
        }
    }

    private static Optional<LocalDate> day(String place, String typed, Faults faults) {
        try {
            return typed.isBlank() ? Optional.empty() : Optional.of(LocalDate.parse(typed.strip()));
        } catch (DateTimeException e) {
            faults.add(place, "must be a day such as 2027-03-01");
            return Optional.empty();
        }
    }

    /** The working copy of a change, for its author. */
    private Draft own(String number, Reader reader) {
        Draft draft = desks.workroom().draft(number).orElseThrow(() -> new NotThere("working copy of this change"));
        draft.mustBeOf(reader.name());
        return draft;
    }

    private static void fill(Draft draft, Optional<String> reason) {
        try {
            draft.copy().fillRecord(reason);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Work that says where to go on. */
    private interface Work {
        String done();
    }

    private ResponseEntity<String> tried(
            String number, OneChange.Typed typed, HttpServletRequest request, Reader reader, Work work) {
        try {
            return Answers.seeOther(work.done());
        } catch (FaultyInput e) {
            return Answers.refused(
                    HttpStatus.UNPROCESSABLE_CONTENT, oneChange.page(number, request, reader, typed, Answers.lines(e)));
        }
    }

    private static FaultyInput fault(String place, String says) {
        return new FaultyInput("change", List.of(new Fault(place, says)));
    }
}
