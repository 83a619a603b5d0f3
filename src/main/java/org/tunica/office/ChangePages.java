package org.tunica.office;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
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
import org.tunica.proposal.NewRecord;
import org.tunica.releases.HandedIn;
import org.tunica.store.Act;
import org.tunica.store.Role;
import org.tunica.store.Subject;
import org.tunica.workroom.Workroom;

/** Changes of rules: all of them, one of them, and a new one. */
@ForPeople
@RestController
final class ChangePages {
    private final Pages pages;
    private final Desks desks;
    private final OneChange oneChange;

    ChangePages(Pages pages, Desks desks) {
        this.pages = pages;
        this.desks = desks;
        this.oneChange = new OneChange(pages, desks);
    }

    /** Every change. */
    @GetMapping(path = "/governance/changes", produces = Pages.HTML)
    String all(HttpServletRequest request, Authentication who) {
        return list(request, who, List.of(), "", "");
    }

    /** Starts one. */
    @PostMapping(path = "/governance/changes", produces = Pages.HTML)
    ResponseEntity<String> start(
            @RequestParam(defaultValue = "") String title,
            @RequestParam(defaultValue = "") String initials,
            HttpServletRequest request,
            Authentication who) {
        try {
            String number = desks.workroom()
                    .begin(Reader.of(who).name(), new NewRecord(title.strip(), initials.strip()))
                    .number();
            return Answers.seeOther("/governance/changes/" + number);
        } catch (FaultyInput e) {
            return Answers.refused(
                    HttpStatus.UNPROCESSABLE_CONTENT, list(request, who, Answers.lines(e), title, initials));
        }
    }

    /** One change; its checks are run when they are asked for. */
    @GetMapping(path = "/governance/changes/{number}", produces = Pages.HTML)
    String one(
            @PathVariable String number,
            @RequestParam Optional<String> checks,
            HttpServletRequest request,
            Authentication who) {
        checks.flatMap(any -> desks.workroom().draft(number)).ifPresent(desks::checked);
        String page = oneChange.page(number, request, Reader.of(who), OneChange.Typed.NOTHING, List.of());
        // what is not there cannot be looked at
        desks.store().audit().note(Reader.of(who).actor(), Act.VIEWED, new Subject("change", number));
        return page;
    }

    private String list(
            HttpServletRequest request, Authentication who, List<String> faults, String title, String initials) {
        List<ChangesPage.DraftRow> drafts = new ArrayList<>();
        desks.workroom().all().forEach(one -> drafts.add(row(one)));
        return pages.written(
                "changes.jte",
                new ChangesPage(
                        pages.frame("Changes", request),
                        RulePages.named(desks.inForce()),
                        Reader.of(who).is(Role.RULE_AUTHOR)
                                && desks.workroom().folder().isPresent(),
                        desks.workroom().folder().isEmpty(),
                        drafts,
                        desks.changes().all().stream().map(ChangePages::row).toList(),
                        faults,
                        title,
                        initials));
    }

    private static ChangesPage.DraftRow row(Workroom.Listed one) {
        return one.draft()
                .map(draft -> new ChangesPage.DraftRow(
                        one.number(),
                        draft.title(),
                        draft.opening().author(),
                        draft.opening().on().toString(),
                        List.of()))
                .orElseGet(() -> new ChangesPage.DraftRow(
                        one.number(),
                        "cannot be read",
                        "unknown",
                        "unknown",
                        one.faults().stream().map(Fault::toString).toList()));
    }

    private static ChangesPage.Row row(HandedIn change) {
        return new ChangesPage.Row(
                change.number(),
                change.state().words(),
                change.author(),
                change.at().toString(),
                change.times(),
                change.release().orElse(""));
    }
}
