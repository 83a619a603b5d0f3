package org.tunica.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.sql.DataSource;
import org.springframework.jdbc.core.JdbcTemplate;

/** Fills an empty store from an archive, inside the transaction that is open. */
final class Restoring {
    private static final int MOST_ROWS = 500;
    private static final int MOST_CHARACTERS = 4_000_000;

    private final JdbcTemplate sql;
    private final Snapshot written;
    private final List<Row> waiting = new ArrayList<>();
    private long characters;

    Restoring(DataSource source) {
        this.sql = new JdbcTemplate(source);
        this.written = new Snapshot(source);
    }

    /** @throws org.tunica.casefile.FaultyInput when something is kept here already */
    void refuseUnlessEmpty(String place) {
        boolean empty = Table.KEPT.stream().allMatch(this::empty) && empty(Table.AUDIT);
        if (!empty) {
            throw Place.fault(place, "holds data already and is left as it is; restore into an empty place");
        }
    }

    private boolean empty(Table table) {
        return sql.queryForList("select 1 from " + table.name() + " limit 1").isEmpty();
    }

    /**
     * Writes every row and looks at the result.
     *
     * @throws org.tunica.casefile.FaultyInput when it does not hold; the transaction must not be kept then
     */
    Verification fill(String what, BackupArchive archive, Optional<AuditHead> noted) {
        try {
            archive.rows(this::take);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        flush();
        AuditHead head = archive.manifest().head();
        sql.update("update audit_head set number = ?, hash = ? where id = 1", head.number(), head.hash());
        Verification found = written.verify(noted);
        found.throwUnlessSound(what);
        return found;
    }

    private void take(Row row) {
        if (!waiting.isEmpty() && !waiting.get(0).table().equals(row.table())) {
            flush();
        }
        waiting.add(row);
        characters += row.values().stream().mapToLong(String::length).sum();
        if (waiting.size() >= MOST_ROWS || characters >= MOST_CHARACTERS) {
            flush();
        }
    }

    private void flush() {
        if (!waiting.isEmpty()) {
            List<Object[]> parameters =
                    waiting.stream().map(row -> row.parameters().toArray()).toList();
            sql.batchUpdate(waiting.get(0).table().insert(), parameters);
            waiting.clear();
            characters = 0;
        }
    }
}
