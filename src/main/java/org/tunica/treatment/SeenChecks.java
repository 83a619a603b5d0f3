package org.tunica.treatment;

import org.tunica.casefile.FieldReader;

/** What cannot be true of one segment at one visit, however each number looks alone. */
final class SeenChecks {
    private SeenChecks() {}

    static void check(FollowUp.Seen seen, double treatedLengthCm, FieldReader reader) {
        if (seen.openLengthCm().orElse(0) > treatedLengthCm) {
            reader.fault("openLengthCm", "no more can be open than was treated");
        }
        if (seen.openLengthCm().orElse(Double.NaN) == 0 && seen.refluxSeconds().orElse(0) > 0) {
            reader.fault("refluxSeconds", "a vein that is open nowhere cannot reflux");
        }
        boolean reachesIn =
                seen.clot().filter(FollowUp.Clot.INTO_DEEP_VEIN::equals).isPresent();
        if (seen.deepLumenPercent().isPresent() && !reachesIn) {
            reader.fault("deepLumenPercent", "belongs to a clot into-deep-vein only");
        }
        if (reachesIn && seen.deepLumenPercent().orElse(1) == 0) {
            reader.fault("deepLumenPercent", "a clot into the deep vein fills some of it");
        }
    }
}
