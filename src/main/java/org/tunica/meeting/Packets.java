package org.tunica.meeting;

import org.springframework.security.core.Authentication;
import org.tunica.Tunica;
import org.tunica.couch.DemoCases;
import org.tunica.couch.PastLibrary;
import org.tunica.frame.NotThere;
import org.tunica.frame.OpenCases;
import org.tunica.frame.Reader;
import org.tunica.store.Act;
import org.tunica.store.KeptCase;
import org.tunica.store.Store;
import org.tunica.store.Subject;

/** Makes the packets of cases that wait, from the version each case has now. */
final class Packets {
    private final Tunica tunica;
    private final Store store;
    private final OpenCases cases;
    private final MeetingBoard board;
    private final PastLibrary past;

    Packets(Tunica tunica, Store store, OpenCases cases, MeetingBoard board, PastLibrary past) {
        this.tunica = tunica;
        this.store = store;
        this.cases = cases;
        this.board = board;
        this.past = past;
    }

    /** The case of an id, and a note that somebody looked at its packet. */
    Waiting looked(String meetingId, Authentication who) {
        Waiting waiting = waiting(meetingId);
        store.audit().note(Reader.of(who).actor(), Act.VIEWED, new Subject("meeting-packet", meetingId));
        return waiting;
    }

    /** The case of an id. */
    Waiting waiting(String meetingId) {
        return board.one(meetingId).orElseThrow(() -> new NotThere("meeting case"));
    }

    Packet of(Waiting waiting) {
        KeptCase kept = latest(waiting);
        return new PacketWriter(tunica, past.forCase(DemoCases.invented(store.cases(), kept)))
                .of(cases.read(kept), waiting.referral());
    }

    /** The version of the case a packet made now is of. */
    long version(Waiting waiting) {
        return latest(waiting).version();
    }

    KeptCase latest(Waiting waiting) {
        return cases.latest(waiting.caseRef());
    }
}
