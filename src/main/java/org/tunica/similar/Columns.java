package org.tunica.similar;

import java.io.IOException;
import java.util.Arrays;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReader;
import org.apache.lucene.index.NumericDocValues;

/**
 * The values of one part of the index in memory, column by column.
 *
 * @param values of each column of a profile by segment, {@link Profile#UNKNOWN} where not recorded
 * @param order by what equally alike segments are put in order
 */
record Columns(int[][] values, long[] order) {

    static Columns of(LeafReader reader) throws IOException {
        int[][] values = new int[Field.COLUMNS][reader.maxDoc()];
        for (int column = 0; column < values.length; column++) {
            Arrays.fill(values[column], Profile.UNKNOWN);
            NumericDocValues stored = DocValues.getNumeric(reader, SegmentDocument.column(column));
            for (int doc = stored.nextDoc(); doc != NumericDocValues.NO_MORE_DOCS; doc = stored.nextDoc()) {
                values[column][doc] = (int) stored.longValue();
            }
        }
        return new Columns(values, order(reader));
    }

    private static long[] order(LeafReader reader) throws IOException {
        long[] order = new long[reader.maxDoc()];
        NumericDocValues stored = DocValues.getNumeric(reader, SegmentDocument.ORDER);
        for (int doc = stored.nextDoc(); doc != NumericDocValues.NO_MORE_DOCS; doc = stored.nextDoc()) {
            order[doc] = stored.longValue();
        }
        return order;
    }

    int size() {
        return order.length;
    }

    /** A bit for each field known of a segment. */
    int mask(int doc) {
        int mask = 0;
        for (int field = 0; field < Field.COLUMNS - Field.SETTING_NUMBERS; field++) {
            mask |= values[field][doc] == Profile.UNKNOWN ? 0 : 1 << field;
        }
        return mask;
    }

    /** The kind of settings of a segment, or {@link Profile#UNKNOWN}. */
    int way(int doc) {
        return values[Field.SETTINGS.column()][doc];
    }
}
