package org.tunica.replay;

/** Counts segments and their cases, which come one after the other. */
final class Counter {
    private int segments;
    private int cases;
    private String lastCase = "";

    void add(String caseRef) {
        segments++;
        if (!caseRef.equals(lastCase)) {
            cases++;
            lastCase = caseRef;
        }
    }

    int segments() {
        return segments;
    }

    int cases() {
        return cases;
    }

    KindCount of(ChangedSegment.Kind kind) {
        return new KindCount(kind, segments, cases);
    }
}
