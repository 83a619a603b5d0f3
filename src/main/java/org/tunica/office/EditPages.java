package org.tunica.office;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.Authentication;
import org.springframework.util.MultiValueMap;
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
import org.tunica.rules.Rule;
import org.tunica.workroom.Draft;
import org.tunica.workroom.NumberEdit;
import org.tunica.workroom.RuleEdit;

/** A change edited: one number, one rule, or one file as text. */
@ForPeople
@RestController
final class EditPages {
    private static final String PATH = "/governance/changes/";

    private final Pages pages;
    private final Desks desks;
    private final EditView view;

    EditPages(Pages pages, Desks desks) {
        this.pages = pages;
        this.desks = desks;
        this.view = new EditView(desks);
    }

    @GetMapping(path = "/governance/changes/{number}/number", produces = Pages.HTML)
    String number(@PathVariable String number, @RequestParam String id, HttpServletRequest request) {
        Draft draft = draft(number);
        NumberEdit.Place place = place(draft, id);
        NumberEdit stands = view.stands(draft, id);
        return pages.written(
                "number.jte",
                view.number(pages.frame(id, request), draft, place, stands, Draft.mark(place.text()), List.of()));
    }

    /** Saves a number as typed; the author goes on at the change, where everything that does not load is told. */
    @PostMapping(path = "/governance/changes/{number}/number", produces = Pages.HTML)
    ResponseEntity<String> saveNumber(
            @PathVariable String number,
            @RequestParam String id,
            @RequestParam(defaultValue = "") String seen,
            @RequestParam(defaultValue = "") String value,
            @RequestParam(defaultValue = "") String source,
            @RequestParam(defaultValue = "") String standing,
            @RequestParam(defaultValue = "") String note,
            HttpServletRequest request,
            Authentication who) {
        Draft draft = draft(number);
        NumberEdit.Place place = place(draft, id);
        NumberEdit typed = new NumberEdit(id, value, source, standing, note);
        try {
            String text = typed.in(place, number, desks.today().toString());
            draft.save(Reader.of(who).name(), place.path(), seen, text);
            return Answers.seeOther(PATH + number);
        } catch (FaultyInput e) {
            NumberPage page = view.number(pages.frame(id, request), draft, place, typed, seen, Answers.lines(e));
            return Answers.refused(HttpStatus.UNPROCESSABLE_CONTENT, pages.written("number.jte", page));
        }
    }

    @GetMapping(path = "/governance/changes/{number}/rule", produces = Pages.HTML)
    String rule(@PathVariable String number, @RequestParam String id, HttpServletRequest request) {
        Draft draft = draft(number);
        RuleEdit edit = edit(draft, id);
        String seen = Draft.mark(draft.text(edit.path()).orElse(""));
        return pages.written(
                "rule-form.jte",
                RuleFormView.of(pages.frame(id, request), number, edit, RuleFormView.standing(edit), seen, List.of()));
    }

    /** Saves a rule as typed. */
    @PostMapping(path = "/governance/changes/{number}/rule", produces = Pages.HTML)
    ResponseEntity<String> saveRule(
            @PathVariable String number,
            @RequestParam MultiValueMap<String, String> fields,
            HttpServletRequest request,
            Authentication who) {
        Draft draft = draft(number);
        RuleEdit.Typed typed = field -> fields.getOrDefault(field, List.of());
        RuleEdit edit = edit(draft, typed.one("id"));
        String seen = typed.one("seen");
        try {
            Rule changed = edit.as(typed, number);
            draft.save(Reader.of(who).name(), edit.path(), seen, edit.in(draft.texts(), changed));
            return Answers.seeOther(PATH + number);
        } catch (FaultyInput e) {
            RuleFormPage page = RuleFormView.of(
                    pages.frame(edit.rule().id(), request), number, edit, typed, seen, Answers.lines(e));
            return Answers.refused(HttpStatus.UNPROCESSABLE_CONTENT, pages.written("rule-form.jte", page));
        }
    }

    @GetMapping(path = "/governance/changes/{number}/text", produces = Pages.HTML)
    String text(
            @PathVariable String number, @RequestParam String path, HttpServletRequest request, Authentication who) {
        Draft draft = draft(number);
        String text = draft.text(path).orElseThrow(() -> new NotThere("file"));
        return pages.written(
                "text.jte",
                view.text(
                        pages.frame(path, request),
                        draft,
                        Reader.of(who).name(),
                        path,
                        text,
                        Draft.mark(text),
                        List.of()));
    }

    /** Saves a file as typed, faulty or not; it comes back with its faults at their lines. */
    @PostMapping(path = "/governance/changes/{number}/text", produces = Pages.HTML)
    ResponseEntity<String> saveText(
            @PathVariable String number,
            @RequestParam String path,
            @RequestParam(defaultValue = "") String seen,
            @RequestParam(defaultValue = "") String text,
            HttpServletRequest request,
            Authentication who) {
        Draft draft = draft(number);
        Reader reader = Reader.of(who);
        try {
            draft.save(reader.name(), path, seen, text);
            return Answers.seeOther(PATH + number + "/text?path=" + path);
        } catch (FaultyInput e) {
            TextPage page =
                    view.text(pages.frame(path, request), draft, reader.name(), path, text, seen, Answers.lines(e));
            return Answers.refused(HttpStatus.UNPROCESSABLE_CONTENT, pages.written("text.jte", page));
        }
    }

    private Draft draft(String number) {
        return desks.workroom().draft(number).orElseThrow(() -> new NotThere("working copy"));
    }

    private static NumberEdit.Place place(Draft draft, String id) {
        return NumberEdit.find(draft, id)
                .orElseThrow(() -> new NotThere("number with an entry of its own in this change"));
    }

    /** A rule of a working copy, which must load: a form shows what was understood. */
    private RuleEdit edit(Draft draft, String id) {
        Map<String, Rule> known = view.rules(draft);
        return Optional.ofNullable(known.get(id))
                .map(rule -> new RuleEdit(
                        rule, desks.reviews().of(draft.copy().after()).knowledge()))
                .orElseThrow(() -> new NotThere("rule in this change"));
    }
}
