package org.tunica.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;

/** One row of a table: its values as texts, in the order of its columns. */
record Row(Table table, List<String> values) {
    Row {
        values = List.copyOf(values);
        if (values.size() != table.columns().size()) {
            throw new IllegalArgumentException(
                    table.name() + " has " + table.columns().size() + " columns, got " + values.size());
        }
    }

    /** The row a result stands at, when its first columns are those of the table. */
    static Row of(Table table, ResultSet result) throws SQLException {
        List<String> values = new ArrayList<>(table.columns().size());
        for (int i = 1; i <= table.columns().size(); i++) {
            values.add(String.valueOf(result.getString(i)));
        }
        return new Row(table, values);
    }

    String text(String column) {
        return values.get(table.place(column));
    }

    long number(String column) {
        return Long.parseLong(text(column));
    }

    List<Object> parameters() {
        List<Object> parameters = new ArrayList<>(values.size());
        for (int i = 0; i < values.size(); i++) {
            parameters.add(table.columns().get(i).parameter(values.get(i)));
        }
        return parameters;
    }

    /** What the audit trail calls this row. */
    Subject subject() {
        return new Subject(table.subject(), id());
    }

    String id() {
        return String.join("/", values.subList(0, table.keys()));
    }

    /** The digest of everything in a kept row but its audit number; its random seal keeps anybody from guessing a case. */
    String content() {
        List<String> texts = new ArrayList<>(values.subList(0, values.size() - 1));
        texts.add(0, table.name());
        return Fingerprint.of(texts);
    }
}
