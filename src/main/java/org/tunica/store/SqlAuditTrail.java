package org.tunica.store;

import java.util.List;
import java.util.Optional;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The audit trail in the table of that name. */
final class SqlAuditTrail implements AuditTrail {
    private final Connections connections;
    private final JdbcClient sql;
    private final Pen pen;

    SqlAuditTrail(Connections connections, JdbcClient sql, Pen pen) {
        this.connections = connections;
        this.sql = sql;
        this.pen = pen;
    }

    @Override
    public Stamp note(Actor by, Act act, Subject subject) {
        return pen.note(by, act, subject);
    }

    @Override
    public AuditHead head() {
        try {
            return Pen.head(sql);
        } catch (DataAccessException e) {
            throw Trouble.of(connections.place(), e);
        }
    }

    @Override
    public List<AuditRow> newest(Page page) {
        return rows("number < ?", page.before(), page.most());
    }

    @Override
    public List<AuditRow> about(Subject subject, Page page) {
        return rows(
                "subject_kind = ? and subject_id = ? and number < ?",
                subject.kind(),
                subject.id(),
                page.before(),
                page.most());
    }

    private List<AuditRow> rows(String condition, Object... parameters) {
        String select =
                "select " + Table.AUDIT.names("") + " from audit where " + condition + " order by number desc limit ?";
        try {
            return sql.sql(select)
                    .params(parameters)
                    .query((result, at) -> AuditRow.of(Row.of(Table.AUDIT, result)))
                    .list();
        } catch (DataAccessException e) {
            throw Trouble.of(connections.place(), e);
        }
    }

    @Override
    public Verification verify() {
        return Snapshot.reading(connections, snapshot -> snapshot.verify(Optional.empty()));
    }

    @Override
    public Verification verify(AuditHead noted) {
        return Snapshot.reading(connections, snapshot -> snapshot.verify(Optional.of(noted)));
    }
}
