package org.tunica.office;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.List;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.Authentication;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.casefile.Word;
import org.tunica.frame.ForPeople;
import org.tunica.frame.NotThere;
import org.tunica.frame.Pages;
import org.tunica.frame.Reader;
import org.tunica.knowledge.Standing;
import org.tunica.releases.Engines;
import org.tunica.rules.Rule;
import org.tunica.store.Act;
import org.tunica.store.Subject;
import org.tunica.watching.DueReview;
import org.tunica.watching.WatchReport;

/** The rules in use: all of them, one of them, and what waits for somebody to look. */
@ForPeople
@RestController
final class RulePages {
    private static final int DAYS_LATELY = 30;
    private static final int DAYS_BEFORE = 90;

    private final Pages pages;
    private final Desks desks;

    RulePages(Pages pages, Desks desks) {
        this.pages = pages;
        this.desks = desks;
    }

    /** The way in; the rules are what everything else is about. */
    @GetMapping(path = "/governance")
    ResponseEntity<String> wayIn() {
        return Answers.seeOther("/governance/rules");
    }

    /** Every rule, or those asked for. */
    @GetMapping(path = "/governance/rules", produces = Pages.HTML)
    String all(
            @RequestParam(defaultValue = "") String stage,
            @RequestParam(defaultValue = "") String standing,
            @RequestParam(defaultValue = "") String review,
            @RequestParam(defaultValue = "") String text,
            HttpServletRequest request,
            Authentication who) {
        RulesPage.Asked asked = new RulesPage.Asked(stage, standing, review, text);
        Engines.Engine engine = desks.inForce();
        WatchReport watch = watch(who);
        List<RuleRow> rows = engine.tunica().review().rules().stream()
                .map(rule -> row(rule, engine, watch))
                .toList();
        RulesPage page = new RulesPage(
                pages.frame("Rules", request),
                named(engine),
                asked,
                Arrays.stream(Standing.values()).map(Word::word).toList(),
                rows.size(),
                rows.stream().filter(asked::wants).toList(),
                watch.alarms().stream()
                        .map(rate -> rate.rule() + " speaks "
                                + rate.drift().word().replace('-', ' ') + ": " + RuleRow.speaks(rate.rule(), watch))
                        .toList());
        return pages.written("rules.jte", page);
    }

    /** One rule. */
    @GetMapping(path = "/governance/rules/{id}", produces = Pages.HTML)
    String one(@PathVariable String id, HttpServletRequest request, Authentication who) {
        Engines.Engine engine = desks.inForce();
        Rule rule = engine.tunica().review().rules().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new NotThere("rule"));
        desks.store().audit().note(Reader.of(who).actor(), Act.VIEWED, new Subject("rule", id));
        RuleView view =
                new RuleView(engine.tunica().review(), desks.changes().scenarios(), desks.probed(engine.tunica()));
        return pages.written(
                "rule.jte",
                view.of(pages.frame(id + " " + rule.title(), request), rule, row(rule, engine, watch(who))));
    }

    /** Overdue reviews, near ones, and numbers nobody checked. */
    @GetMapping(path = "/governance/due", produces = Pages.HTML)
    String due(HttpServletRequest request, Authentication who) {
        WatchReport watch = watch(who);
        return pages.written(
                "due.jte",
                new DuePage(
                        pages.frame("Reviews and unverified numbers", request),
                        named(desks.inForce()),
                        due(watch, DueReview.Due.OVERDUE),
                        due(watch, DueReview.Due.SOON),
                        watch.unverified().stream()
                                .map(number -> new DuePage.Unchecked(
                                        number.id(), number.value(), number.says(), number.source(), number.rules()))
                                .toList()));
    }

    private static List<DuePage.Line> due(WatchReport watch, DueReview.Due due) {
        return watch.reviews().stream()
                .filter(review -> review.due() == due)
                .map(review -> new DuePage.Line(
                        review.id(),
                        review.id().matches("[A-Z]{3}-\\d{3}"),
                        review.title(),
                        review.lastDay().toString()))
                .toList();
    }

    private RuleRow row(Rule rule, Engines.Engine engine, WatchReport watch) {
        return RuleRow.of(rule, engine.tunica().knowledge(), watch, desks.today());
    }

    private WatchReport watch(Authentication who) {
        return desks.watch().look(Reader.of(who).actor(), DAYS_LATELY, DAYS_BEFORE);
    }

    /** Whose rules they are, in words. */
    static String named(Engines.Engine engine) {
        return engine.version()
                .map(version -> "Release " + version + ", in force.")
                .orElse("The program's own rules, a DRAFT: no release is in force here.");
    }
}
