package org.tunica.store;

import java.time.Instant;
import java.util.List;

/** Feedback in the table of that name. */
final class SqlFeedbackBook implements FeedbackBook {
    private static final String ID = "[A-Za-z0-9][A-Za-z0-9._-]{0,99}";
    private static final String OUTCOME = "[a-z][a-z-]{0,39}";

    private final Pen pen;
    private final Shelf shelf;

    SqlFeedbackBook(Pen pen, Shelf shelf) {
        this.pen = pen;
        this.shelf = shelf;
    }

    @Override
    public boolean keep(Actor by, HookFeedback feedback) {
        Texts.shaped("card", feedback.card(), ID);
        Texts.shaped("service", feedback.service(), ID);
        Texts.shaped("outcome", feedback.outcome(), OUTCOME);
        Texts.kept("feedback on card " + feedback.card(), feedback.body());
        long at = feedback.outcomeAt().toEpochMilli();
        return pen.write(() -> {
            boolean known = shelf.one(
                            "t.card = ? and t.outcome = ? and t.outcome_at_ms = ?",
                            feedback.card(),
                            feedback.outcome(),
                            at)
                    .isPresent();
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
