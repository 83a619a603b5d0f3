package org.tunica.store;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Seen tokens in the table of that name. It takes no write lock: the key of the table alone decides who came first. */
final class SqlSeenBook implements SeenBook {
    private static final Duration A_SECOND = Duration.ofSeconds(1);
    private static final Duration BETWEEN_CLEANINGS = Duration.ofMinutes(5);

    /** So long a token is remembered past its end, for servers whose clocks are behind this one. */
    private static final Duration CLOCKS_APART = Duration.ofHours(1);

    private final String place;
    private final JdbcClient sql;
    private final Clock clock;
    private final AtomicReference<Instant> nextCleaning;

    SqlSeenBook(String place, JdbcClient sql, Clock clock) {
        this.place = place;
        this.sql = sql;
        this.clock = clock;
        this.nextCleaning = new AtomicReference<>(Instant.EPOCH);
    }

    @Override
    public boolean firstTime(String issuer, String id, Instant until) {
        try {
            forgetOld();
            return sql.sql("insert into seen_tokens (issuer, id, until_ms) values (?, ?, ?) on conflict do nothing")
                            .params(issuer, id, until.toEpochMilli())
                            .update()
                    == 1;
        } catch (DataAccessException e) {
            throw Trouble.of(place, e);
        }
    }

    @Override
    public Instant since() {
        try {
            return sql.sql("select max(at_ms) from audit where act = ?")
                    .param(Act.RESTORED.word())
                    .query(Long.class)
                    .optional()
                    .map(atMs -> Instant.ofEpochMilli(atMs).plus(A_SECOND).truncatedTo(ChronoUnit.SECONDS))
                    .orElse(Instant.EPOCH);
        } catch (DataAccessException e) {
            throw Trouble.of(place, e);
        }
    }

    private void forgetOld() {
        Instant now = clock.instant();
        Instant due = nextCleaning.get();
        if (!now.isBefore(due) && nextCleaning.compareAndSet(due, now.plus(BETWEEN_CLEANINGS))) {
            sql.sql("delete from seen_tokens where until_ms < ?")
                    .param(now.minus(CLOCKS_APART).toEpochMilli())
                    .update();
        }
    }
}
