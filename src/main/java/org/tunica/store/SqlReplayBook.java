package org.tunica.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Supplier;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Replays in the table of that name. */
final class SqlReplayBook implements ReplayBook {
    private static final String COLUMNS = "id, change_number, against_digest, draft_digest, seed, invented_count,"
            + " asked_by, since_ms, done_count, result, failure";
    private static final String RUNS = "result = '' and failure = ''";

    private final String place;
    private final JdbcClient sql;
    private final Pen pen;

    SqlReplayBook(String place, JdbcClient sql, Pen pen) {
        this.place = place;
        this.sql = sql;
        this.pen = pen;
    }

    @Override
    public void begin(Actor by, SharedReplay replay) {
        pen.write(() -> {
            running().ifPresent(other -> {
                throw new OutOfDate("change " + other.change() + " is being replayed, begun by " + other.by()
                        + "; one runs at a time");
            });
            sql.sql("delete from replays where id = ?").param(replay.id()).update();
            sql.sql("insert into replays (" + COLUMNS + ") values (?, ?, ?, ?, ?, ?, ?, ?, 0, '', '')")
                    .params(
                            replay.id(),
                            replay.change(),
                            replay.against(),
                            replay.draft(),
                            replay.seed(),
                            replay.inventedCount(),
                            replay.by(),
                            replay.since().toEpochMilli())
                    .update();
            return pen.note(by, Act.REPLAY_BEGUN, new Subject("replay", replay.id()));
        });
    }

    @Override
    public Optional<SharedReplay> running() {
        return asked(() -> sql.sql("select " + COLUMNS + " from replays where " + RUNS)
                .query((row, at) -> of(row))
                .optional());
    }

    @Override
    public Optional<SharedReplay> one(String id) {
        return asked(() -> sql.sql("select " + COLUMNS + " from replays where id = ?")
                .param(id)
                .query((row, at) -> of(row))
                .optional());
    }

    private static SharedReplay of(ResultSet row) throws SQLException {
        return new SharedReplay(
                row.getString("id"),
                row.getString("change_number"),
                row.getString("against_digest"),
                row.getString("draft_digest"),
                row.getLong("seed"),
                row.getLong("invented_count"),
                row.getString("asked_by"),
                Instant.ofEpochMilli(row.getLong("since_ms")),
                row.getLong("done_count"),
                row.getString("result"),
                row.getString("failure"));
    }

    @Override
    public void at(String id, long doneCount) {
        asked(() -> sql.sql("update replays set done_count = ? where id = ? and done_count < ?")
                .params(doneCount, id, doneCount)
                .update());
    }

    @Override
    public void finished(String id, String result) {
        ended(id, "result", Texts.kept("replay", result));
    }

    @Override
    public void failed(String id, String why) {
        ended(id, "failure", Texts.kept("replay", why));
    }

    private void ended(String id, String column, String text) {
        asked(() -> sql.sql("update replays set " + column + " = ? where id = ? and " + RUNS)
                .params(text, id)
                .update());
    }

    private <T> T asked(Supplier<T> asking) {
        try {
            return asking.get();
        } catch (DataAccessException e) {
            throw Trouble.of(place, e);
        }
    }
}
