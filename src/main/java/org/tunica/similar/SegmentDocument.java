package org.tunica.similar;

import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field.Store;
import org.apache.lucene.document.NumericDocValuesField;
import org.apache.lucene.document.StringField;
import org.apache.lucene.document.TextField;
import org.apache.lucene.search.Sort;
import org.apache.lucene.search.SortField;

/** One past segment as a document of the index, and the names of its fields. Nothing of a case is kept in it but columns. */
final class SegmentDocument {
    static final String SIGNATURE = "signature";
    static final String ORDER = "order";
    static final String WHERE = "where";
    static final String CASE = "case";
    static final String TECHNIQUE = "technique-used";
    static final String OUTCOME = "outcome";
    static final String INVENTED = "invented";
    static final String SITE = "site";
    static final String NOTES = "notes";

    /** Like segments side by side, the same in the order of their ids. */
    static final Sort SORT =
            new Sort(new SortField(SIGNATURE, SortField.Type.LONG), new SortField(ORDER, SortField.Type.LONG));

    private SegmentDocument() {}

    /** The name under which a column of a profile stands. */
    static String column(int column) {
        Field[] fields = Field.values();
        return column < fields.length ? fields[column].word() : "setting" + (column - fields.length);
    }

    static Document of(Entry entry) {
        Document document = new Document();
        for (int column = 0; column < Field.COLUMNS; column++) {
            if (entry.profile().at(column) != Profile.UNKNOWN) {
                document.add(new NumericDocValuesField(
                        column(column), entry.profile().at(column)));
            }
        }
        document.add(new NumericDocValuesField(SIGNATURE, Signature.of(entry.profile())));
        document.add(new NumericDocValuesField(ORDER, entry.order()));
        document.add(new NumericDocValuesField(WHERE, entry.where()));
        document.add(term(CASE, entry.caseId()));
        document.add(term(TECHNIQUE, entry.technique()));
        document.add(term(INVENTED, Boolean.toString(entry.invented())));
        document.add(term(SITE, entry.site()));
        entry.closed()
                .ifPresent(closed -> document.add(
                        term(OUTCOME, SimilarFilter.Outcome.of(closed).word())));
        entry.notes().forEach(note -> document.add(new TextField(NOTES, note, Store.NO)));
        return document;
    }

    private static StringField term(String name, String value) {
        return new StringField(name, value, Store.NO);
    }
}
