package org.tunica.meeting;

import java.nio.charset.StandardCharsets;
import org.tunica.Tunica;
import org.tunica.couch.DemoCases;
import org.tunica.couch.PastLibrary;
import org.tunica.frame.NotThere;
import org.tunica.store.KeptCase;
import org.tunica.store.Store;

/** Makes the packets of cases that wait, from the version each case has now. */
final class Packets {
    private final Tunica tunica;
    private final Store store;
    private final PastLibrary past;

    Packets(Tunica tunica, Store store, PastLibrary past) {
        this.tunica = tunica;
        this.store = store;
        this.past = past;
    }

    Packet of(Waiting waiting) {
        KeptCase kept = latest(waiting);
        return new PacketWriter(tunica, past.forCase(DemoCases.invented(store.cases(), kept)))
                .of(tunica.readCase("case", kept.json().getBytes(StandardCharsets.UTF_8)), waiting.referral());
    }

    /** The version of the case a packet made now is of. */
    long version(Waiting waiting) {
        return latest(waiting).version();
    }

    KeptCase latest(Waiting waiting) {
        return store.cases().latest(waiting.caseRef()).orElseThrow(() -> new NotThere("case"));
    }
}
