package org.tunica.treatment;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.tunica.casefile.Ceap;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.KnownWords;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Word;
import org.tunica.knowledge.Family;

/**
 * How it went after a closure, as it was recorded: {@code tunica-followup/1}. What is absent is unknown. Immutable.
 *
 * @param format {@link #FORMAT}
 * @param caseRef the name of the case, as in the plan
 */
public record FollowUp(String format, String caseRef, List<FollowedLimb> limbs) {
    /** The word a follow-up must carry under {@code format}. */
    public static final String FORMAT = "tunica-followup/1";

    /** Every number a follow-up may hold, by its path in knowledge/measurements.yaml. */
    public static final List<String> NUMBERS = List.of(
            "followup.vcss",
            "followup.limbs.treated.treatedLengthCm",
            "followup.limbs.visits.daysAfter",
            "followup.limbs.visits.painOfTen",
            "followup.limbs.visits.segments.openLengthCm",
            "followup.limbs.visits.segments.refluxSeconds",
            "followup.limbs.visits.segments.deepLumenPercent");

    /** The most visits of one limb. */
    public static final int MOST_VISITS = 60;

    public FollowUp {
        limbs = List.copyOf(limbs);
    }

    /** A follow-up in this format. */
    public FollowUp(String caseRef, List<FollowedLimb> limbs) {
        this(FORMAT, caseRef, limbs);
    }

    /**
     * Reads a follow-up in JSON.
     *
     * @param what the name of the input, for messages
     * @param bytes UTF-8 JSON
     * @throws org.tunica.casefile.FaultyInput with every fault and its JSON path
     */
    public static FollowUp read(String what, byte[] bytes, KnownWords known) {
        return new FollowUpReader(known, new Faults()).read(what, bytes);
    }

    /**
     * Reads a follow-up that stands inside another file; its faults are noted with theirs.
     *
     * @param faults those the reader notes, too
     */
    public static FollowUp read(FieldReader reader, Faults faults, KnownWords known) {
        return new FollowUpReader(known, faults).read(reader);
    }

    /**
     * One leg.
     *
     * @param ceapBefore class before the procedure
     * @param vcssBefore severity before it
     * @param treated what was treated
     * @param visits in the order of their days
     */
    public record FollowedLimb(
            Limb.Side side,
            Optional<Ceap> ceapBefore,
            Optional<SeverityGrades> vcssBefore,
            List<TreatedLength> treated,
            List<Visit> visits) {
        public FollowedLimb {
            treated = List.copyOf(treated);
            visits = List.copyOf(visits);
        }
    }

    /**
     * One segment and by which definition it counts as closed.
     *
     * @param ref its name in the plan
     */
    public record TreatedLength(String ref, double treatedLengthCm, ClosureDefinition closure) {}

    /**
     * One visit.
     *
     * @param daysAfter days since the procedure
     * @param painOfTen pain, 0 to 10
     * @param segments what was seen of each segment; absent when none was looked at
     */
    public record Visit(
            int daysAfter,
            OptionalInt painOfTen,
            Optional<Ceap> ceap,
            Optional<SeverityGrades> vcss,
            Optional<List<Seen>> segments) {
        public Visit {
            segments = segments.map(List::copyOf);
        }
    }

    /**
     * What was seen of one segment.
     *
     * @param openLengthCm length found open
     * @param clot what grew towards the deep vein
     * @param deepLumenPercent share of the deep lumen it fills, when it reaches in
     * @param complications what went wrong since the last visit; absent when nobody asked, empty when there was none
     * @param again what was done to the segment again
     */
    public record Seen(
            String ref,
            OptionalDouble openLengthCm,
            OptionalDouble refluxSeconds,
            Optional<Clot> clot,
            OptionalDouble deepLumenPercent,
            Optional<List<Complication>> complications,
            Optional<Again> again) {

        /** Whether the vein was scanned at all. */
        boolean scanned() {
            return openLengthCm.isPresent() || refluxSeconds.isPresent() || clot.isPresent();
        }

        /** Whether something was done to it again. */
        boolean treatedAgain() {
            return again.filter(done -> done != Again.NONE).isPresent();
        }
    }

    /** A clot at the deep end of the treated vein. */
    public enum Clot implements Word {
        /** None beyond the treated vein. */
        NONE,
        UP_TO_JUNCTION,
        INTO_DEEP_VEIN
    }

    /** What was done to a segment again. */
    public enum Again implements Word {
        NONE,
        HEAT,
        FOAM,
        LIQUID_SCLEROTHERAPY,
        MECHANOCHEMICAL,
        ADHESIVE,
        FOCUSED_ULTRASOUND,
        PHLEBECTOMY,
        SURGERY;

        /** The family whose scans it gets; a clot after heat alone has a first scan of its own. */
        Family scannedLike() {
            return switch (this) {
                case HEAT -> Family.HEAT;
                case MECHANOCHEMICAL -> Family.MECHANOCHEMICAL;
                case ADHESIVE -> Family.ADHESIVE;
                case FOCUSED_ULTRASOUND -> Family.FOCUSED_ULTRASOUND;
                case NONE, FOAM, LIQUID_SCLEROTHERAPY, PHLEBECTOMY, SURGERY -> Family.FOAM;
            };
        }
    }
}
