package org.tunica.office;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.frame.NotThere;
import org.tunica.frame.Pages;
import org.tunica.frame.Reader;
import org.tunica.knowledge.Bundle;
import org.tunica.proposal.CheckedChange;
import org.tunica.releases.ChangeState;
import org.tunica.releases.HandedIn;
import org.tunica.store.Role;
import org.tunica.workroom.Draft;

/** The page of one change, whatever was done last. */
record OneChange(Pages pages, Desks desks) {

    /**
     * What was typed into the forms of the page and not taken.
     *
     * @param reason of the change
     * @param build what a release was to be called
     */
    record Typed(Optional<String> reason, Optional<ChangePage.Build> build) {
        static final Typed NOTHING = new Typed(Optional.empty(), Optional.empty());

        static Typed reason(String reason) {
            return new Typed(Optional.of(reason), Optional.empty());
        }
    }

    String page(String number, HttpServletRequest request, Reader reader, Typed typed, List<String> faults) {
        ChangeView view = new ChangeView(desks);
        Optional<Draft> draft = desks.workroom().draft(number);
        Optional<HandedIn> handedIn = view.known(number);
        if (draft.isEmpty() && handedIn.isEmpty()) {
            throw new NotThere("change");
        }
        Optional<CheckedChange> document = handedIn.map(one -> CheckedChange.read("change " + number, one.document()));
        String title = draft.map(Draft::title)
                .or(() -> document.flatMap(CheckedChange::record).map(CheckedChange.Told::title))
                .orElse("change " + number);
        List<Fault> loads = draft.map(desks.workroom()::faults).orElse(List.of());
        boolean mine = reader.is(Role.RULE_AUTHOR) && author(draft, handedIn).equals(reader.name());
        Optional<Bundle> proposed = proposed(view, number, draft, handedIn, loads);
        return pages.written(
                "change.jte",
                new ChangePage(
                        pages.frame("Change " + number + ": " + title, request),
                        number,
                        draft.map(Draft::opening)
                                .or(() -> document.map(CheckedChange::opening))
                                .map(opening -> ChangeView.facts(opening, title))
                                .orElseThrow(),
                        mine,
                        draft.map(one -> view.draft(one, loads, typed.reason().orElseGet(() -> reason(one)))),
                        handedIn.map(OneChange::stands),
                        told(draft, handedIn, document),
                        view.replay(proposed, reader.is(Role.RULE_AUTHOR)),
                        typed.build()
                                .or(() -> view.build(handedIn, title))
                                .filter(build -> mine && finished(view, number, handedIn)),
                        faults));
    }

    private static String author(Optional<Draft> draft, Optional<HandedIn> handedIn) {
        return draft.map(one -> one.opening().author())
                .or(() -> handedIn.map(HandedIn::author))
                .orElseThrow();
    }

    private static String reason(Draft draft) {
        try {
            return draft.copy().record().reason();
        } catch (FaultyInput e) {
            return "";
        }
    }

    private static String stands(HandedIn change) {
        return change.state().words()
                + change.release().map(version -> " " + version).orElse("") + ", handed in " + change.times()
                + (change.times() == 1 ? " time" : " times") + ", last moved " + change.at();
    }

    private Optional<ChangePage.Told> told(
            Optional<Draft> draft, Optional<HandedIn> handedIn, Optional<CheckedChange> document) {
        Optional<ChangePage.Told> now = draft.flatMap(desks::checkedToday)
                .map(checked -> ChangeView.told("Checked today, as the working copy stands", checked));
        return now.or(() -> handedIn.flatMap(one -> document)
                .map(checked -> ChangeView.told("As it was handed in, checked on " + checked.day(), checked)));
    }

    /** What a replay would try: what was handed in while it is in review, else the working copy when it loads. */
    Optional<Bundle> proposed(
            ChangeView view, String number, Optional<Draft> draft, Optional<HandedIn> handedIn, List<Fault> loads) {
        if (handedIn.filter(one -> one.state() != ChangeState.WITHDRAWN).isPresent()) {
            return Optional.of(view.handedIn(number));
        }
        return draft.filter(one -> loads.isEmpty()).map(one -> one.copy().after());
    }

    private boolean finished(ChangeView view, String number, Optional<HandedIn> handedIn) {
        return handedIn.filter(one -> one.state() == ChangeState.IN_REVIEW)
                .filter(one -> desks.replays()
                        .finished(view.sides(view.handedIn(number)))
                        .isPresent())
                .isPresent();
    }
}
