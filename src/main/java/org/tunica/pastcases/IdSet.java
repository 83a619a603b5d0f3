package org.tunica.pastcases;

/** The ids of a base, packed: a million of them take some 25 MB and not the 120 MB of as many texts. */
final class IdSet {
    private static final int PREFIX = 2;
    private static final int HIGH_DIGITS = 16;
    private static final int HEX = 16;
    private static final int FIRST_SLOTS = 1 << 12;

    private long[] high = new long[FIRST_SLOTS];
    private int[] low = new int[FIRST_SLOTS];
    private boolean[] used = new boolean[FIRST_SLOTS];
    private int size;

    /** Adds an id of the form {@link PastCase#ID}; tells whether it was new. */
    boolean add(String id) {
        if (size * 2 >= high.length) {
            grow();
        }
        int middle = PREFIX + HIGH_DIGITS;
        return put(
                Long.parseUnsignedLong(id.substring(PREFIX, middle), HEX),
                Integer.parseUnsignedInt(id.substring(middle), HEX));
    }

    private boolean put(long h, int l) {
        int mask = high.length - 1;
        int slot = (int) ((h ^ (h >>> 32)) * 0x9e3779b9 >>> 7) + l & mask;
        while (used[slot]) {
            if (high[slot] == h && low[slot] == l) {
                return false;
            }
            slot = slot + 1 & mask;
        }
        high[slot] = h;
        low[slot] = l;
        used[slot] = true;
        size++;
        return true;
    }

    private void grow() {
        long[] oldHigh = high;
        int[] oldLow = low;
        boolean[] oldUsed = used;
        high = new long[oldHigh.length * 2];
        low = new int[high.length];
        used = new boolean[high.length];
        size = 0;
        for (int i = 0; i < oldHigh.length; i++) {
            if (oldUsed[i]) {
                put(oldHigh[i], oldLow[i]);
            }
        }
    }
}
