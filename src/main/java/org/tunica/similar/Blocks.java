package org.tunica.similar;

import java.util.Arrays;

/**
 * Runs of like segments side by side. Of each it is known between which ends its numbers lie and which words occur, so that it
 * can be told how alike any of them can be at best. All segments of a block know the same fields and have settings of one kind.
 */
final class Blocks {
    /** Longer blocks are fewer to look at, shorter ones tighter. */
    static final int LONGEST = 64;

    private final Columns columns;
    private final int[] starts;
    private final int[] kinds;
    private int kindCount;
    private final int[][] least;
    private final int[][] most;
    private final long[][] words;

    Blocks(Columns columns) {
        this.columns = columns;
        this.starts = starts(columns);
        this.kinds = kindOfEach();
        this.least = new int[Field.COLUMNS][];
        this.most = new int[Field.COLUMNS][];
        this.words = new long[Field.COLUMNS][];
        for (int column = 0; column < Field.COLUMNS; column++) {
            if (holdsWords(column)) {
                words[column] = words(columns.values()[column]);
            } else {
                least[column] = new int[count()];
                most[column] = new int[count()];
                ends(column);
            }
        }
    }

    private static boolean holdsWords(int column) {
        return column < Field.values().length && !Field.values()[column].numeric();
    }

    private static int[] starts(Columns columns) {
        int[] starts = new int[columns.size() + 1];
        int blocks = 0;
        int mask = 0;
        for (int doc = 0; doc < columns.size(); doc++) {
            int own = columns.mask(doc);
            boolean like = doc > 0 && own == mask && columns.way(doc) == columns.way(doc - 1);
            if (!like || doc - starts[blocks - 1] == LONGEST) {
                starts[blocks++] = doc;
            }
            mask = own;
        }
        starts[blocks] = columns.size();
        return Arrays.copyOf(starts, blocks + 1);
    }

    /** Blocks of one kind know the same fields; they stand side by side. */
    private int[] kindOfEach() {
        int[] found = new int[count()];
        for (int block = 0; block < found.length; block++) {
            boolean like = block > 0
                    && columns.mask(start(block)) == columns.mask(start(block - 1))
                    && columns.way(start(block)) == columns.way(start(block - 1));
            kindCount += like ? 0 : 1;
            found[block] = kindCount - 1;
        }
        return found;
    }

    private long[] words(int[] values) {
        long[] found = new long[count()];
        for (int block = 0; block < found.length; block++) {
            for (int doc = start(block); doc < end(block); doc++) {
                found[block] |= values[doc] == Profile.UNKNOWN ? 0 : 1L << values[doc];
            }
        }
        return found;
    }

    private void ends(int column) {
        int[] values = columns.values()[column];
        for (int block = 0; block < count(); block++) {
            int low = Integer.MAX_VALUE;
            int high = Integer.MIN_VALUE;
            for (int doc = start(block); doc < end(block); doc++) {
                low = Math.min(low, values[doc]);
                high = Math.max(high, values[doc]);
            }
            least[column][block] = low;
            most[column][block] = high;
        }
    }

    int count() {
        return starts.length - 1;
    }

    /** The first segment of a block. */
    int start(int block) {
        return starts[block];
    }

    /** The first segment behind a block. */
    int end(int block) {
        return starts[block + 1];
    }

    /** The number of its kind: blocks of one kind know the same fields and have settings of one kind. */
    int kind(int block) {
        return kinds[block];
    }

    int kinds() {
        return kindCount;
    }

    Columns columns() {
        return columns;
    }

    /** A value every segment of a block shares as known or unknown: that of its first. */
    int first(int column, int block) {
        return columns.values()[column][starts[block]];
    }

    /** The number nearest to another between the ends of a block. */
    int nearest(int column, int block, int number) {
        return Math.max(least[column][block], Math.min(most[column][block], number));
    }

    /** The words that occur in a block, a bit for each; beyond 64 words some share a bit. */
    long words(int column, int block) {
        return words[column][block];
    }
}
