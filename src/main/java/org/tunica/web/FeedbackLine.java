package org.tunica.web;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tunica.store.FeedbackBook;
import org.tunica.store.GivenCard;
import org.tunica.store.HookFeedback;
import org.tunica.store.Store;

/**
 * What somebody did with a card, what it rested on, and what was found later.
 *
 * @param technique id of the technique it was about
 * @param rules ids of the rules it rested on; empty when that was not kept
 */
record FeedbackLine(
        String card,
        String outcome,
        Instant at,
        Optional<String> technique,
        List<String> rules,
        List<Found> judgements) {
    /** What one person found. */
    record Found(String judge, String found, String because, Instant at) {
        static Found of(FeedbackBook.KeptJudgement kept) {
            return new Found(
                    kept.judgement().judge(),
                    kept.judgement().found().word(),
                    kept.judgement().reason(),
                    kept.stamp().at());
        }
    }

    static FeedbackLine of(Store store, HookFeedback report) {
        Optional<GivenCard> card = store.cards().one(report.card());
        return new FeedbackLine(
                report.card(),
                report.outcome(),
                report.outcomeAt(),
                card.map(GivenCard::technique).filter(id -> !id.isEmpty()),
                card.map(given -> List.copyOf(given.rules())).orElse(List.of()),
                store.feedback().judgements(report.card(), report.outcome(), report.outcomeAt()).stream()
                        .map(Found::of)
                        .toList());
    }
}
