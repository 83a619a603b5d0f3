package org.tunica.cli;

import java.util.List;
import java.util.Optional;
import org.tunica.store.FeedbackBook;
import org.tunica.store.GivenCard;
import org.tunica.store.HookFeedback;
import org.tunica.store.Judgement;
import org.tunica.store.Store;

/** Reports of cards as lines of text; nothing of what people wrote in their own words. */
final class FeedbackText {
    private static final String OVERRIDDEN = "overridden";

    private final Store store;

    FeedbackText(Store store) {
        this.store = store;
    }

    List<String> lines(List<FeedbackBook.Kept> reports, boolean all) {
        return reports.stream()
                .map(FeedbackBook.Kept::feedback)
                .filter(report -> all
                        || report.outcome().equals(OVERRIDDEN) && last(report).isEmpty())
                .map(this::line)
                .toList();
    }

    private String line(HookFeedback report) {
        Optional<GivenCard> card = store.cards().one(report.card());
        String about = card.map(GivenCard::technique)
                .filter(id -> !id.isEmpty())
                .map(id -> " about " + id)
                .orElse("");
        String rules = card.map(GivenCard::rules)
                .filter(ids -> !ids.isEmpty())
                .map(ids -> " (" + String.join(", ", ids) + ")")
                .orElse("");
        String found = last(report)
                .map(last -> last.found().word().replace('-', ' ') + ", says " + last.judge())
                .orElse("nobody has looked");
        return report.outcomeAt() + "  card " + report.card() + about + rules + ": " + report.outcome() + "; " + found;
    }

    private Optional<Judgement> last(HookFeedback report) {
        return store.feedback().judgements(report.card(), report.outcome(), report.outcomeAt()).stream()
                .map(FeedbackBook.KeptJudgement::judgement)
                .reduce((earlier, later) -> later);
    }
}
