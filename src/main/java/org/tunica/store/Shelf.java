package org.tunica.store;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Reads the rows of one table together with the audit rows that tell of them. */
final class Shelf {
    private final String place;
    private final Table table;
    private final JdbcClient sql;

    /** A kept row and how it came to be. */
    record Kept(Row row, Stamp stamp) {}

    Shelf(String place, Table table, JdbcClient sql) {
        this.place = place;
        this.table = table;
        this.sql = sql;
    }

    /** The first row a condition holds for; in the condition {@code t} is the table. */
    Optional<Kept> one(String condition, Object... parameters) {
        return many(condition, parameters).stream().findFirst();
    }

    /** Every row a condition holds for. */
    List<Kept> many(String condition, Object... parameters) {
        String select = "select " + table.names("t.") + ", a.at_ms, a.actor from " + table.name()
                + " t join audit a on a.number = t.audit_number where " + condition;
        int columns = table.columns().size();
        try {
            return sql.sql(select)
                    .params(parameters)
                    .query((result, at) -> {
                        Row row = Row.of(table, result);
                        Instant time = Instant.ofEpochMilli(result.getLong(columns + 1));
                        return new Kept(
                                row, new Stamp(row.number("audit_number"), time, result.getString(columns + 2)));
                    })
                    .list();
        } catch (DataAccessException e) {
            throw Trouble.of(place, e);
        }
    }

    /** A page of the rows a condition holds for, newest first. */
    List<Kept> newest(Page page, String condition, Object... parameters) {
        Object[] all = Arrays.copyOf(parameters, parameters.length + 2);
        all[parameters.length] = page.before();
        all[parameters.length + 1] = page.most();
        return many(condition + " and t.audit_number < ? order by t.audit_number desc limit ?", all);
    }
}
