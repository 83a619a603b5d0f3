package org.tunica.store;

import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.TransactionException;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * The one way to write: a transaction that holds the write lock from its first statement, so that what it reads is the
 * latest, audit numbers have no gap, and each change and its audit row stand or fall together.
 */
final class Pen {
    private static final int SEAL_BYTES = 16;

    private final String place;
    private final JdbcClient sql;
    private final TransactionTemplate transaction;
    private final Clock clock;
    private final SecureRandom random = new SecureRandom();

    /** Writers of this process queue here, in order of coming, rather than wake each other at the database. */
    private final ReentrantLock queue = new ReentrantLock(true);

    Pen(Connections connections, JdbcClient sql, Clock clock) {
        this.place = connections.place();
        this.sql = sql;
        this.transaction = new TransactionTemplate(new JdbcTransactionManager(connections.pool()));
        this.clock = clock;
    }

    /**
     * Does the work in one transaction; one that is open already takes it in.
     *
     * @throws StoreUnavailable when the database cannot
     */
    <T> T write(Supplier<T> work) {
        queue.lock();
        try {
            return transaction.<T>execute(status -> {
                lock();
                return work.get();
            });
        } catch (DataAccessException | TransactionException e) {
            throw Trouble.of(place, e);
        } finally {
            queue.unlock();
        }
    }

    private void lock() {
        if (sql.sql("update audit_head set number = number where id = 1").update() != 1) {
            throw Texts.fault("audit trail", "its head is missing; nothing is written until a person has looked");
        }
    }

    /** Tells of an act that changed nothing kept. */
    Stamp note(Actor by, Act act, Subject subject) {
        return write(() -> append(by, act, subject, ""));
    }

    /** Keeps a new row. */
    Stamp keep(Actor by, Act act, Table table, List<String> values) {
        return put(by, act, table, values, table.insert());
    }

    /** Keeps a row in place of the one with the same key, if there is one. */
    Stamp replace(Actor by, Act act, Table table, List<String> values) {
        return put(by, act, table, values, table.replace());
    }

    private Stamp put(Actor by, Act act, Table table, List<String> values, String statement) {
        return write(() -> {
            List<String> all = new ArrayList<>(values);
            all.add(seal());
            all.add("0");
            Row unnumbered = new Row(table, all);
            Stamp stamp = append(by, act, unnumbered.subject(), unnumbered.content());
            all.set(all.size() - 1, Long.toString(stamp.auditNumber()));
            sql.sql(statement).params(new Row(table, all).parameters()).update();
            return stamp;
        });
    }

    private Stamp append(Actor by, Act act, Subject subject, String content) {
        AuditHead head = head(sql);
        Instant at = Instant.ofEpochMilli(clock.millis());
        AuditRow row = AuditRow.after(head, at, by, act, subject, content);
        sql.sql(Table.AUDIT.insert()).params(row.row().parameters()).update();
        sql.sql("update audit_head set number = ?, hash = ? where id = 1")
                .params(row.number(), row.hash())
                .update();
        return new Stamp(row.number(), at, by.id());
    }

    static AuditHead head(JdbcClient sql) {
        return sql.sql("select number, hash from audit_head where id = 1")
                .query((result, at) -> new AuditHead(result.getLong(1), result.getString(2)))
                .single();
    }

    private String seal() {
        byte[] bytes = new byte[SEAL_BYTES];
        random.nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }
}
