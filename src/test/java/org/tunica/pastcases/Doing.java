package org.tunica.pastcases;

import java.util.List;
import java.util.Optional;
import org.tunica.treatment.DeliveredSegment;
import org.tunica.treatment.DeliveredSession;

/** Records of delivery with free texts of one's choice. */
final class Doing {
    private Doing() {}

    /** The same session with every segment done. */
    static DeliveredSession everything(DeliveredSession from) {
        return with(
                from,
                from.segments().stream()
                        .map(segment -> with(segment, Optional.empty(), segment.incidentNote()))
                        .toList());
    }

    static DeliveredSession with(DeliveredSession from, List<DeliveredSegment> segments) {
        return new DeliveredSession(
                from.format(),
                from.caseRef(),
                from.session(),
                from.date(),
                from.people(),
                from.indication(),
                from.severityPoints(),
                from.consent(),
                from.timeOut(),
                from.otherLidocaineMg(),
                from.otherAdrenaline(),
                from.totals(),
                segments,
                from.aftercare());
    }

    static DeliveredSegment with(DeliveredSegment from, Optional<String> notDone, Optional<String> incidentNote) {
        return new DeliveredSegment(
                from.ref(),
                notDone,
                from.technique(),
                from.position(),
                from.access(),
                from.tipToJunctionCm(),
                from.treatedLengthCm(),
                from.heat(),
                from.stretches(),
                from.tumescent(),
                from.sclerosant(),
                from.adhesive(),
                from.lesions(),
                from.phlebectomyIncisions(),
                from.incidents(),
                incidentNote,
                from.closingDuplex());
    }
}
