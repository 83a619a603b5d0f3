package org.tunica.store;

import java.time.Duration;
import java.util.Optional;
import java.util.function.Supplier;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Parts in the table of replays; for a database that tells the time. */
final class SqlPartBook implements PartBook {
    private static final String NOW_MS = "cast(extract(epoch from clock_timestamp()) * 1000 as bigint)";

    private final String place;
    private final JdbcClient sql;

    SqlPartBook(String place, JdbcClient sql) {
        this.place = place;
        this.sql = sql;
    }

    @Override
    public boolean take(String work, long part, String cases, String owner, Duration lease) {
        return asked(() -> sql.sql(
                                "insert into replay_parts (replay, part, cases, owner, until_ms, result) values (?, ?, ?, ?, "
                                        + NOW_MS + " + ?, '') on conflict (replay, part, cases) do update"
                                        + " set owner = excluded.owner, until_ms = excluded.until_ms"
                                        + " where replay_parts.result = '' and (replay_parts.until_ms < " + NOW_MS
                                        + " or replay_parts.owner = excluded.owner)")
                        .params(work, part, cases, owner, lease.toMillis())
                        .update())
                == 1;
    }

    @Override
    public void hold(String owner, Duration lease) {
        asked(() -> sql.sql("update replay_parts set until_ms = " + NOW_MS + " + ? where owner = ? and result = ''")
                .params(lease.toMillis(), owner)
                .update());
    }

    @Override
    public void keep(String work, long part, String cases, String result) {
        Texts.kept("part " + part, result);
        asked(() -> sql.sql("update replay_parts set result = ?, until_ms = " + NOW_MS
                        + " where replay = ? and part = ? and cases = ? and result = ''")
                .params(result, work, part, cases)
                .update());
    }

    @Override
    public Optional<String> result(String work, long part, String cases) {
        return asked(() -> sql.sql("select result from replay_parts where replay = ? and part = ? and cases = ?"
                        + " and result <> ''")
                .params(work, part, cases)
                .query(String.class)
                .optional());
    }

    @Override
    public void forget(Duration untouched) {
        asked(() -> sql.sql("delete from replay_parts where until_ms < " + NOW_MS + " - ?")
                .param(untouched.toMillis())
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
