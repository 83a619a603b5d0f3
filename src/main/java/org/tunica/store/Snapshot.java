package org.tunica.store;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.sql.DataSource;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.RowCallbackHandler;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.TransactionException;
import org.springframework.transaction.support.TransactionTemplate;
import org.tunica.casefile.Faults;

/** The whole store as it stands at one moment, read row by row while others write on. */
final class Snapshot {
    private static final int FETCHED_AT_ONCE = 500;

    private final JdbcTemplate sql;

    /** The store as the transaction sees it that is open on this thread, or else as it stands. */
    Snapshot(DataSource source) {
        this.sql = new JdbcTemplate(source);
        sql.setFetchSize(FETCHED_AT_ONCE);
    }

    /**
     * Reads at one moment.
     *
     * @throws StoreUnavailable when the database cannot
     */
    static <T> T reading(Connections connections, Function<Snapshot, T> reading) {
        TransactionTemplate transaction = new TransactionTemplate(new JdbcTransactionManager(connections.pool()));
        transaction.setIsolationLevel(TransactionDefinition.ISOLATION_SERIALIZABLE);
        transaction.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
        try {
            return transaction.<T>execute(status -> reading.apply(new Snapshot(connections.pool())));
        } catch (DataAccessException | TransactionException e) {
            throw Trouble.of(connections.place(), e);
        }
    }

    /** Every row of a table, in the order in which they came to be. */
    void rows(Table table, Consumer<Row> taker) {
        String order = table == Table.AUDIT ? "number" : "audit_number";
        sql.query("select " + table.names("") + " from " + table.name() + " order by " + order, (RowCallbackHandler)
                result -> taker.accept(Row.of(table, result)));
    }

    AuditHead head() {
        return sql
                .query(
                        "select number, hash from audit_head where id = 1",
                        (result, at) -> new AuditHead(result.getLong(1), result.getString(2)))
                .stream()
                .findFirst()
                .orElse(AuditHead.NONE);
    }

    Verification verify(Optional<AuditHead> noted) {
        Faults faults = new Faults();
        ChainCheck chain = new ChainCheck();
        rows(Table.AUDIT, row -> {
            chain.next(row);
            noted.filter(head -> head.number() == row.number("number"))
                    .filter(head -> !head.hash().equals(row.text("hash")))
                    .ifPresent(head ->
                            faults.add(place(head), "is not the row noted elsewhere; the trail was written anew"));
        });
        AuditHead head = head();
        chain.end(head);
        noted.filter(earlier -> earlier.number() > head.number())
                .ifPresent(earlier ->
                        faults.add(place(earlier), "was noted elsewhere and is missing; the trail ends before it"));
        Faults all = new Faults();
        chain.bad().ifPresent(fault -> all.add(fault.place(), fault.says()));
        faults.list().forEach(fault -> all.add(fault.place(), fault.says()));
        KeptCheck kept = new KeptCheck(sql, all);
        Table.KEPT.forEach(kept::check);
        return new Verification(chain.rows(), kept.rows(), head, all.list());
    }

    private static String place(AuditHead head) {
        return "audit row " + head.number();
    }
}
