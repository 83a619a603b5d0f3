package org.tunica.replay;

import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;

/** A segment of a replayed case that does not come out the same. */
public record ReplayedSegment(
        String caseRef, Limb.Side side, Segment.Vein vein, Segment.Level level, ChangedSegment change) {

    static ReplayedSegment of(CaseFile caseFile, Limb limb, Segment segment, ChangedSegment change) {
        return new ReplayedSegment(caseFile.caseRef(), limb.side(), segment.vein(), segment.level(), change);
    }

    /** For example {@code p-0123, L1, left great saphenous at the thigh}. */
    public String where() {
        return caseRef + ", " + change.ref() + ", " + side.word() + " "
                + vein.word().replace('-', ' ') + ", " + level.word().replace('-', ' ');
    }
}
