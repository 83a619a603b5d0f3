package org.tunica.treatment;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.tunica.casefile.Room;
import org.tunica.casefile.Segment;
import org.tunica.casefile.Word;
import org.tunica.session.Position;

/**
 * What was delivered to one segment.
 *
 * @param ref name of the segment in the case
 * @param notDone why nothing was done; then nothing else is given
 * @param technique id of the technique really used
 * @param position how the patient lay
 * @param access where the vein was entered
 * @param tipToJunctionCm from the tip to the deep junction at the start
 * @param treatedLengthCm length treated
 * @param heat the setting over the whole treated length, or its sums when there are stretches
 * @param stretches stretches treated each with its own setting, from the junction down
 * @param tumescent fluid around the vein
 * @param sclerosant drug given into the vein
 * @param adhesive adhesive given into the vein
 * @param lesions of focused ultrasound
 * @param phlebectomyIncisions small cuts for tributaries taken out along it
 * @param incidents what went wrong; known and empty means nothing
 * @param incidentNote more about it, in words
 * @param closingDuplex the last scan
 */
public record DeliveredSegment(
        String ref,
        Optional<String> notDone,
        Optional<String> technique,
        Optional<Position> position,
        Access access,
        OptionalDouble tipToJunctionCm,
        OptionalDouble treatedLengthCm,
        Optional<DeliveredHeat> heat,
        Optional<List<DeliveredHeat>> stretches,
        Optional<Tumescent> tumescent,
        Optional<Sclerosant> sclerosant,
        Optional<Adhesive> adhesive,
        OptionalInt lesions,
        OptionalInt phlebectomyIncisions,
        Optional<Set<Incident>> incidents,
        Optional<String> incidentNote,
        ClosingDuplex closingDuplex) {

    public DeliveredSegment {
        stretches = stretches.map(List::copyOf);
    }

    /** Where the vein was entered. */
    public record Access(Optional<Segment.Vein> vein, Optional<Segment.Level> level) {}

    /**
     * Fluid around the vein.
     *
     * @param lidocainePercent grams in 100 mL; 0 is saline alone
     */
    public record Tumescent(
            OptionalDouble volumeMl,
            OptionalDouble lidocainePercent,
            Optional<Boolean> adrenaline,
            Optional<Boolean> chilled) {}

    /**
     * Drug given into the vein.
     *
     * @param liquidMl as liquid, or the liquid the foam was made of
     * @param gasParts to one part of liquid
     * @param foamMl of ready foam; absent for liquid alone
     */
    public record Sclerosant(
            Optional<Room.SclerosantDrug> drug,
            OptionalDouble percent,
            OptionalDouble liquidMl,
            Optional<Room.FoamGas> gas,
            OptionalDouble gasParts,
            OptionalDouble foamMl) {}

    /** Adhesive given into the vein. */
    public record Adhesive(OptionalInt aliquots, OptionalDouble volumeMl) {}

    /**
     * The last scan.
     *
     * @param closedLengthCm of the treated vein
     * @param deepVeinOpen whether the deep vein was seen open
     */
    public record ClosingDuplex(OptionalDouble closedLengthCm, Optional<Boolean> deepVeinOpen) {}

    /** What can go wrong in the room. */
    public enum Incident implements Word {
        ACCESS_FAILED,
        DEVICE_DID_NOT_PASS,
        DEVICE_FAILED,
        VEIN_PERFORATED,
        BLEEDING,
        SKIN_BURN,
        NERVE_PAIN,
        FAINTING,
        ALLERGIC_REACTION,
        VISUAL_DISTURBANCE,
        CHEST_TIGHTNESS,
        CLOT_IN_DEEP_VEIN,
        OTHER
    }
}
