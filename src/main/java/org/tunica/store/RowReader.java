package org.tunica.store;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.json.JsonFactory;

/** Reads the rows of a table from JSON objects, one after the other, without holding more than one. */
final class RowReader {
    private static final JsonFactory JSON = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(1)
                    .maxStringLength(Texts.LONGEST)
                    .maxNameLength(100)
                    .maxNumberLength(20)
                    .build())
            .build();

    private final Table table;
    private final JsonParser parser;
    private long rows;

    /** A row that is none. */
    static final class NoRow extends RuntimeException {
        NoRow(String message) {
            super(message);
        }
    }

    private RowReader(Table table, JsonParser parser) {
        this.table = table;
        this.parser = parser;
    }

    /**
     * Hands over every row.
     *
     * @return how many
     * @throws NoRow at the first that is none
     */
    static long read(Table table, InputStream in, Consumer<Row> taker) {
        try (JsonParser parser = JSON.createParser(ObjectReadContext.empty(), in)) {
            RowReader reader = new RowReader(table, parser);
            while (parser.nextToken() != null) {
                taker.accept(reader.row());
                reader.rows++;
            }
            return reader.rows;
        } catch (JacksonException e) {
            throw new NoRow("cannot be read: " + e.getOriginalMessage());
        }
    }

    private Row row() {
        expect(parser.currentToken() == JsonToken.START_OBJECT);
        List<String> values = new ArrayList<>(table.columns().size());
        for (Column column : table.columns()) {
            expect(parser.nextToken() == JsonToken.PROPERTY_NAME
                    && parser.currentName().equals(column.name()));
            JsonToken token = parser.nextToken();
            expect(token == (column.number() ? JsonToken.VALUE_NUMBER_INT : JsonToken.VALUE_STRING));
            values.add(column.number() ? Long.toString(parser.getLongValue()) : parser.getString());
        }
        expect(parser.nextToken() == JsonToken.END_OBJECT);
        return new Row(table, values);
    }

    private void expect(boolean kept) {
        if (!kept) {
            throw new NoRow("row " + (rows + 1) + " is not an object with " + table.names(""));
        }
    }
}
