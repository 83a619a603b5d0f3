package org.tunica.store;

import java.util.List;

/** Changes in the table of their steps. */
final class SqlChangeShelf implements ChangeShelf {
    private static final String NUMBER = "[0-9]{4}";
    private static final String NAME = "[A-Za-z0-9][A-Za-z0-9._-]{0,99}";

    private final Pen pen;
    private final Shelf shelf;

    SqlChangeShelf(Pen pen, Shelf shelf) {
        this.pen = pen;
        this.shelf = shelf;
    }

    @Override
    public KeptChangeStep step(Actor by, NewChangeStep step) {
        String what = "change " + step.number();
        Texts.shaped("number", step.number(), NUMBER);
        Texts.shaped("author", step.author(), NAME);
        List.of(step.body(), step.files(), step.reason()).forEach(text -> Texts.kept(what, text));
        return pen.write(() -> {
            long number = steps(step.number()).size() + 1L;
            List<String> values = List.of(
                    step.number(),
                    Long.toString(number),
                    step.act().word(),
                    step.author(),
                    step.digest(),
                    step.rules(),
                    step.body(),
                    step.files(),
                    step.reason());
            return new KeptChangeStep(step, number, pen.keep(by, step.act(), Table.CHANGE_STEPS, values));
        });
    }

    @Override
    public List<KeptChangeStep> steps(String number) {
        return shelf.many("t.number = ? order by t.step", number).stream()
                .map(SqlChangeShelf::of)
                .toList();
    }

    @Override
    public List<KeptChangeStep> last() {
        return shelf
                .many("t.step = (select max(s.step) from change_steps s where s.number = t.number)"
                        + " order by t.audit_number desc")
                .stream()
                .map(SqlChangeShelf::of)
                .toList();
    }

    private static KeptChangeStep of(Shelf.Kept kept) {
        Row row = kept.row();
        NewChangeStep step = new NewChangeStep(
                row.text("number"),
                Words.of(Act.class, row.text("kind")),
                row.text("author"),
                row.text("digest"),
                row.text("rules"),
                row.text("body"),
                row.text("files"),
                row.text("reason"));
        return new KeptChangeStep(step, row.number("step"), kept.stamp());
    }
}
