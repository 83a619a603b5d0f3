package org.tunica.replay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Where records stand, by a hash of their question: twelve bytes a record, so that a million stand in the memory of a small
 * machine. Two questions may share a hash; whoever asks compares. Not safe for several threads.
 */
final class HeatIndex {
    private static final int FREE = -1;

    private long[] hashes = new long[1 << 12];
    private int[] records = free(1 << 12);
    private int size;

    private static int[] free(int length) {
        int[] free = new int[length];
        Arrays.fill(free, FREE);
        return free;
    }

    void add(byte[] key, int record) {
        if (2 * ++size > records.length) {
            grow();
        }
        put(hash(key), record);
    }

    /** Every record that may hold a key; hardly ever more than one. */
    List<Integer> mayHold(byte[] key) {
        List<Integer> found = new ArrayList<>(1);
        long hash = hash(key);
        for (int i = slot(hash); records[i] != FREE; i = i + 1 & records.length - 1) {
            if (hashes[i] == hash) {
                found.add(records[i]);
            }
        }
        return found;
    }

    int size() {
        return size;
    }

    private void put(long hash, int record) {
        int i = slot(hash);
        while (records[i] != FREE) {
            i = i + 1 & records.length - 1;
        }
        hashes[i] = hash;
        records[i] = record;
    }

    private void grow() {
        long[] oldHashes = hashes;
        int[] oldRecords = records;
        hashes = new long[2 * oldHashes.length];
        records = free(hashes.length);
        for (int i = 0; i < oldRecords.length; i++) {
            if (oldRecords[i] != FREE) {
                put(oldHashes[i], oldRecords[i]);
            }
        }
    }

    private int slot(long hash) {
        return (int) (hash ^ hash >>> 32) & records.length - 1;
    }

    /** FNV-1a over 64 bits, from memory; it decides where to look, never what is equal. */
    private static long hash(byte[] key) {
        long hash = 0xcbf29ce484222325L;
        for (byte one : key) {
            hash = (hash ^ one & 0xff) * 0x100000001b3L;
        }
        return hash;
    }
}
