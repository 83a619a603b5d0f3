package org.tunica.casefile;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One incompetent stretch of vein as the duplex scan saw it.
 *
 * @param ref the name of the segment in the map, unique in the case
 * @param lumenDiameterMm inner diameter in the state of {@code measured}
 * @param wallThicknessMm whole wall in the state of {@code measured}
 * @param depthToSkinMm from the front wall to the skin
 * @param topToDeepJunctionCm from the upper end to the deep junction, 0 when it reaches it
 * @param chosen id of the technique a person has already chosen for this segment; absent while none is chosen, which is
 *     a state of the work and no missing measurement
 */
public record Segment(
        String ref,
        Vein vein,
        Level level,
        OptionalDouble lengthCm,
        OptionalDouble straightCm,
        OptionalDouble lumenDiameterMm,
        OptionalDouble lumenDiameterSdMm,
        OptionalDouble wallThicknessMm,
        OptionalDouble wallThicknessSdMm,
        Measured measured,
        OptionalDouble depthToSkinMm,
        OptionalDouble depthToSkinSdMm,
        Nerve nerve,
        OptionalDouble refluxSeconds,
        Optional<Course> course,
        Optional<Boolean> withinFascia,
        Optional<Thrombus> thrombus,
        Optional<EarlierTreatment> earlierTreatment,
        OptionalDouble topToDeepJunctionCm,
        Optional<String> chosen) {

    /** Which vein. */
    public enum Vein implements Word {
        GREAT_SAPHENOUS,
        SMALL_SAPHENOUS,
        ANTERIOR_ACCESSORY,
        POSTERIOR_ACCESSORY,
        THIGH_EXTENSION,
        TRIBUTARY,
        PERFORATOR,
        RECURRENT_CHANNEL
    }

    /** Where along the leg. */
    public enum Level implements Word {
        GROIN,
        THIGH,
        KNEE,
        UPPER_CALF,
        MID_CALF,
        LOWER_CALF,
        ANKLE,
        POPLITEAL
    }

    /** How the vein runs. */
    public enum Course implements Word {
        STRAIGHT,
        WINDING,
        VERY_WINDING
    }

    /** What lies in the lumen. */
    public enum Thrombus implements Word {
        NONE,
        FRESH,
        ORGANISED,
        WEBS
    }

    /** What was done to this segment before. */
    public enum EarlierTreatment implements Word {
        NONE,
        HEAT,
        FOAM,
        MECHANOCHEMICAL,
        ADHESIVE,
        FOCUSED_ULTRASOUND,
        SURGERY
    }

    /** The state in which lumen and wall were measured. */
    public record Measured(
            Optional<Posture> posture, Optional<Boolean> inSpasm, OptionalDouble relaxedLumenDiameterMm) {

        /** Posture of the patient. */
        public enum Posture implements Word {
            STANDING,
            SITTING,
            LYING,
            HEAD_DOWN
        }
    }

    /**
     * The nearest sensory or motor nerve.
     *
     * @param gapMm from the outer wall to the nerve
     */
    public record Nerve(Optional<Name> name, OptionalDouble gapMm, OptionalDouble gapSdMm) {

        /** Nerves met in this work. */
        public enum Name implements Word {
            SAPHENOUS,
            SURAL,
            TIBIAL,
            COMMON_FIBULAR,
            SUPERFICIAL_FIBULAR,
            FEMORAL,
            OTHER
        }
    }
}
