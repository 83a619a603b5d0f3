package org.tunica.store;

import java.util.List;
import java.util.Optional;

/** Past cases in the table of that name. */
final class SqlPastCaseShelf implements PastCaseShelf {
    private static final String ID = "[A-Za-z0-9][A-Za-z0-9._-]{0,63}";

    private final Pen pen;
    private final Shelf shelf;

    SqlPastCaseShelf(Pen pen, Shelf shelf) {
        this.pen = pen;
        this.shelf = shelf;
    }

    @Override
    public KeptPastCase offer(Actor by, String id, String line) {
        return add(by, Act.PAST_CASE_OFFERED, id, PastCaseState.WAITING, line);
    }

    @Override
    public KeptPastCase bringIn(Actor by, String id, String line) {
        return add(by, Act.PAST_CASE_BROUGHT_IN, id, PastCaseState.RELEASED, line);
    }

    private KeptPastCase add(Actor by, Act act, String id, PastCaseState state, String line) {
        Texts.shaped("id", id, ID);
        oneLine(id, line);
        return pen.write(() -> {
            one(id).ifPresent(there -> {
                throw new OutOfDate("past case " + id + " is " + there.state().word() + " already");
            });
            return put(by, act, id, state, line);
        });
    }

    private static void oneLine(String id, String line) {
        Texts.kept("past case " + id, line);
        if (line.isBlank() || line.indexOf('\n') >= 0 || line.indexOf('\r') >= 0) {
            throw Texts.fault("past case " + id, "must be one line");
        }
    }

    @Override
    public KeptPastCase rewrite(Actor by, KeptPastCase seen, String line) {
        return asSeen(by, Act.PAST_CASE_COARSENED, seen, PastCaseState.WAITING, line);
    }

    @Override
    public KeptPastCase release(Actor by, KeptPastCase seen, String line) {
        return asSeen(by, Act.PAST_CASE_RELEASED, seen, PastCaseState.RELEASED, line);
    }

    private KeptPastCase asSeen(Actor by, Act act, KeptPastCase seen, PastCaseState to, String line) {
        oneLine(seen.id(), line);
        return pen.write(() -> {
            KeptPastCase there = there(seen.id(), PastCaseState.WAITING);
            if (there.stamp().auditNumber() != seen.stamp().auditNumber()) {
                throw new OutOfDate("past case " + seen.id() + " was changed since it was seen");
            }
            return put(by, act, seen.id(), to, line);
        });
    }

    @Override
    public KeptPastCase refuse(Actor by, String id) {
        return forget(by, Act.PAST_CASE_REFUSED, id, PastCaseState.WAITING, PastCaseState.REFUSED);
    }

    @Override
    public KeptPastCase withdraw(Actor by, String id) {
        return forget(by, Act.PAST_CASE_WITHDRAWN, id, PastCaseState.RELEASED, PastCaseState.WITHDRAWN);
    }

    private KeptPastCase forget(Actor by, Act act, String id, PastCaseState from, PastCaseState to) {
        return pen.write(() -> {
            there(id, from);
            return put(by, act, id, to, "");
        });
    }

    private KeptPastCase there(String id, PastCaseState state) {
        KeptPastCase there = one(id).orElseThrow(() -> Texts.fault("past case " + id, "there is none of that id"));
        if (there.state() != state) {
            throw new OutOfDate("past case " + id + " is " + there.state().word() + ", not " + state.word());
        }
        return there;
    }

    private KeptPastCase put(Actor by, Act act, String id, PastCaseState state, String line) {
        Stamp stamp = pen.replace(by, act, Table.PAST_CASES, List.of(id, state.word(), line));
        return new KeptPastCase(id, state, line, stamp);
    }

    @Override
    public Optional<KeptPastCase> one(String id) {
        return shelf.one("t.id = ?", id).map(SqlPastCaseShelf::of);
    }

    @Override
    public List<KeptPastCase> since(long auditNumber, int most) {
        return shelf.many("t.audit_number > ? order by t.audit_number limit ?", auditNumber, most).stream()
                .map(SqlPastCaseShelf::of)
                .toList();
    }

    @Override
    public List<KeptPastCase> in(PastCaseState state, Page page) {
        return shelf.newest(page, "t.state = ?", state.word()).stream()
                .map(SqlPastCaseShelf::of)
                .toList();
    }

    private static KeptPastCase of(Shelf.Kept kept) {
        Row row = kept.row();
        return new KeptPastCase(
                row.text("id"), Words.of(PastCaseState.class, row.text("state")), row.text("line"), kept.stamp());
    }
}
