package org.tunica.couch;

import java.util.List;
import java.util.Set;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Patient;
import org.tunica.casefile.Room;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Knowledge;

/**
 * What a form of a case asks, read off the records of the contract, so that whatever a case can hold has its field and a
 * new measurement needs none of its own here.
 *
 * @param head of the case itself
 * @param limb of each leg
 * @param segment of each segment
 */
record CaseAsks(List<Ask> head, List<Ask> patient, List<Ask> room, List<Ask> limb, List<Ask> segment) {
    /** With the words and ranges of a release. */
    static CaseAsks of(Knowledge knowledge) {
        AskReader reading = new AskReader(
                new AskWords(knowledge), Set.of(Patient.class, Room.class, Limb.class, Segment.class), Set.of());
        return new CaseAsks(
                reading.asks(CaseFile.class, ""),
                reading.asks(Patient.class, "patient."),
                reading.asks(Room.class, "room."),
                reading.asks(Limb.class, "limbs."),
                reading.asks(Segment.class, "limbs.segments."));
    }
}
