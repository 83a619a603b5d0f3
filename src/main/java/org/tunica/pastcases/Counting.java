package org.tunica.pastcases;

import java.security.MessageDigest;
import java.util.Collections;
import java.util.HexFormat;
import java.util.SortedMap;
import java.util.TreeMap;

/** Counts past cases one by one. */
final class Counting {
    private final SortedMap<String, Long> byTechnique = new TreeMap<>();
    private final SortedMap<Integer, Long> byYear = new TreeMap<>();
    private final MessageDigest digest = Digests.sha256();
    private long cases;
    private long invented;
    private long segments;

    void add(byte[] line, PastCase read) {
        digest.update(line);
        digest.update((byte) '\n');
        cases++;
        invented += read.invented() ? 1 : 0;
        read.year().ifPresent(year -> byYear.merge(year, 1L, Long::sum));
        read.delivered()
                .forEach(session -> session.segments()
                        .forEach(segment -> segment.technique().ifPresent(technique -> {
                            segments++;
                            byTechnique.merge(technique, 1L, Long::sum);
                        })));
    }

    CaseCount sum() {
        return new CaseCount(
                cases,
                invented,
                segments,
                Collections.unmodifiableSortedMap(byTechnique),
                Collections.unmodifiableSortedMap(byYear),
                "sha256:" + HexFormat.of().formatHex(digest.digest()));
    }
}
