package org.tunica.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Feedback in the table of that name. */
final class SqlFeedbackBook implements FeedbackBook {
    private static final String ID = "[A-Za-z0-9][A-Za-z0-9._-]{0,99}";
    private static final String OUTCOME = "[a-z][a-z-]{0,39}";

    private final Pen pen;
    private final Shelf shelf;

    private final Shelf judgements;

    SqlFeedbackBook(Pen pen, Shelf shelf, Shelf judgements) {
        this.pen = pen;
        this.shelf = shelf;
        this.judgements = judgements;
    }

    @Override
    public boolean keep(Actor by, HookFeedback feedback) {
        Texts.shaped("card", feedback.card(), ID);
        Texts.shaped("service", feedback.service(), ID);
        Texts.shaped("outcome", feedback.outcome(), OUTCOME);
        Texts.kept("feedback on card " + feedback.card(), feedback.body());
        long at = feedback.outcomeAt().toEpochMilli();
        return pen.write(() -> {
            boolean known = report(feedback.card(), feedback.outcome(), at).isPresent();
            if (!known) {
                List<String> values = List.of(
                        feedback.card(), feedback.outcome(), Long.toString(at), feedback.service(), feedback.body());
                pen.keep(by, Act.FEEDBACK_RECEIVED, Table.FEEDBACK, values);
            }
            return !known;
        });
    }

    @Override
    public List<Kept> newest(Page page) {
        return shelf.newest(page, "t.audit_number > 0").stream()
                .map(SqlFeedbackBook::of)
                .toList();
    }

    @Override
    public List<Kept> of(String card) {
        return shelf.many("t.card = ? order by t.audit_number desc", card).stream()
                .map(SqlFeedbackBook::of)
                .toList();
    }

    @Override
    public KeptJudgement judge(Actor by, Judgement judgement) {
        String what = "judgement of card " + judgement.card();
        Texts.shaped("judge", judgement.judge(), ID);
        Texts.kept(what, judgement.reason());
        long at = judgement.outcomeAt().toEpochMilli();
        return pen.write(() -> {
            if (report(judgement.card(), judgement.outcome(), at).isEmpty()) {
                throw Texts.fault(
                        what,
                        "nobody reported of it that it was " + judgement.outcome() + " at " + judgement.outcomeAt());
            }
            int before = judgements(judgement.card(), judgement.outcome(), judgement.outcomeAt())
                    .size();
            List<String> values = List.of(
                    judgement.card(),
                    judgement.outcome(),
                    Long.toString(at),
                    Integer.toString(before + 1),
                    judgement.found().word(),
                    judgement.judge(),
                    judgement.reason());
            return new KeptJudgement(judgement, pen.keep(by, Act.FEEDBACK_JUDGED, Table.FEEDBACK_JUDGEMENTS, values));
        });
    }

    private Optional<Shelf.Kept> report(String card, String outcome, long atMs) {
        return shelf.one("t.card = ? and t.outcome = ? and t.outcome_at_ms = ?", card, outcome, atMs);
    }

    @Override
    public List<KeptJudgement> judgements(String card, String outcome, Instant outcomeAt) {
        return judgements
                .many(
                        "t.card = ? and t.outcome = ? and t.outcome_at_ms = ? order by t.number",
                        card,
                        outcome,
                        outcomeAt.toEpochMilli())
                .stream()
                .map(SqlFeedbackBook::judgement)
                .toList();
    }

    private static KeptJudgement judgement(Shelf.Kept kept) {
        Row row = kept.row();
        Judgement judgement = new Judgement(
                row.text("card"),
                row.text("outcome"),
                Instant.ofEpochMilli(row.number("outcome_at_ms")),
                Words.of(Judgement.Finding.class, row.text("judgement")),
                row.text("judge"),
                row.text("reason"));
        return new KeptJudgement(judgement, kept.stamp());
    }

    private static Kept of(Shelf.Kept kept) {
        Row row = kept.row();
        HookFeedback feedback = new HookFeedback(
                row.text("service"),
                row.text("card"),
                row.text("outcome"),
                Instant.ofEpochMilli(row.number("outcome_at_ms")),
                row.text("body"));
        return new Kept(feedback, kept.stamp());
    }
}
