package org.tunica.store;

import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.RowCallbackHandler;
import org.tunica.casefile.Faults;

/** Compares what is kept in one table with what the audit trail tells of it, both ways. */
final class KeptCheck {
    private final JdbcTemplate sql;
    private final Faults faults;
    private long rows;

    KeptCheck(JdbcTemplate sql, Faults faults) {
        this.sql = sql;
        this.faults = faults;
    }

    void check(Table table) {
        everyRowIsToldOf(table);
        nothingToldOfIsGone(table);
    }

    long rows() {
        return rows;
    }

    private void everyRowIsToldOf(Table table) {
        int columns = table.columns().size();
        String select = "select " + table.names("t.") + ", a.content, a.subject_kind, a.subject_id from " + table.name()
                + " t left join audit a on a.number = t.audit_number order by t.audit_number";
        sql.query(select, (RowCallbackHandler) result -> {
            rows++;
            Row row = Row.of(table, result);
            String content = result.getString(columns + 1);
            String told = result.getString(columns + 2) + " " + result.getString(columns + 3);
            String place = table.subject() + " " + row.id();
            if (content == null || !told.equals(place)) {
                faults.add(place, "no row of the audit trail tells of it; somebody put it there");
            } else if (!content.equals(row.content())) {
                faults.add(place, "is not as audit row " + row.text("audit_number") + " tells; somebody changed it");
            }
        });
    }

    /** The last that is told of a subject must be what is there: an older state put back is gone as well. */
    private void nothingToldOfIsGone(Table table) {
        String select = "select a.number, a.subject_kind, a.subject_id from audit a"
                + " where a.subject_kind = ? and a.content <> ''"
                + " and not exists (select 1 from " + table.name() + " t where t.audit_number = a.number)"
                + " and not exists (select 1 from audit b where b.subject_kind = a.subject_kind"
                + " and b.subject_id = a.subject_id and b.number > a.number and b.content <> '') order by a.number";
        sql.query(
                select,
                (RowCallbackHandler) result -> faults.add(
                        result.getString(2) + " " + result.getString(3),
                        "is not there as audit row " + result.getLong(1)
                                + " tells; somebody removed it or put an older state back"),
                table.subject());
    }
}
