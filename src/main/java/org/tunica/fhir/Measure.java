package org.tunica.fhir;

import java.util.Arrays;
import java.util.Optional;
import org.tunica.casefile.Word;

/** What an Observation or a component of one can be about, and where in a case it goes. */
enum Measure implements Word {
    AGE(About.PATIENT, "ageYears", "a"),
    SEX(About.PATIENT, "sex", Kind.WORD),
    BODY_WEIGHT(About.PATIENT, "weightKg", "kg"),
    BODY_HEIGHT(About.PATIENT, "heightCm", "cm"),
    PREGNANT(About.PATIENT, "pregnant", Kind.FLAG),
    BREASTFEEDING(About.PATIENT, "breastfeeding", Kind.FLAG),
    ANTICOAGULATION(About.PATIENT, "anticoagulation", Kind.WORD),
    MOBILITY(About.PATIENT, "mobility", Kind.WORD),
    NEEDLE_AVERSION(About.PATIENT, "needleAversion", Kind.FLAG),
    CAN_LIE_HEAD_DOWN(About.PATIENT, "canLie.headDown", Kind.FLAG),
    CAN_LIE_FLAT(About.PATIENT, "canLie.flat", Kind.FLAG),
    CAN_LIE_PRONE(About.PATIENT, "canLie.prone", Kind.FLAG),
    AVOID_NEEDLES(About.PATIENT, "avoid-needles", Kind.FLAG),
    AVOID_REPEAT(About.PATIENT, "avoid-repeat", Kind.FLAG),
    ALLERGIES_COMPLETE(About.PATIENT, "allergies", Kind.FLAG),
    CONDITIONS_COMPLETE(About.PATIENT, "conditions", Kind.FLAG),

    CEAP_CLASS(About.LIMB, "ceapClass", Kind.WORD),
    ANKLE_BRACHIAL_INDEX(About.LIMB, "ankleBrachialIndex", "1"),
    ANKLE_PRESSURE(About.LIMB, "anklePressureMmHg", "mm[Hg]"),
    TOE_PRESSURE(About.LIMB, "toePressureMmHg", "mm[Hg]"),
    DEEP_VEINS(About.LIMB, "deepVeins", Kind.WORD),
    TRUNK_IS_MAIN_OUTFLOW(About.LIMB, "trunkIsMainOutflow", Kind.FLAG),

    SEGMENT(About.SEGMENT, "", Kind.GROUP),
    SIDE(About.SEGMENT, "side", Kind.WORD),
    VEIN(About.SEGMENT, "vein", Kind.WORD),
    LEVEL(About.SEGMENT, "level", Kind.WORD),
    LENGTH(About.SEGMENT, "lengthCm", "cm"),
    STRAIGHT_LENGTH(About.SEGMENT, "straightCm", "cm"),
    LUMEN_DIAMETER(About.SEGMENT, "lumenDiameterMm", "mm"),
    LUMEN_DIAMETER_SD(About.SEGMENT, "lumenDiameterSdMm", "mm"),
    WALL_THICKNESS(About.SEGMENT, "wallThicknessMm", "mm"),
    WALL_THICKNESS_SD(About.SEGMENT, "wallThicknessSdMm", "mm"),
    POSTURE(About.SEGMENT, "measured.posture", Kind.WORD),
    IN_SPASM(About.SEGMENT, "measured.inSpasm", Kind.FLAG),
    RELAXED_LUMEN_DIAMETER(About.SEGMENT, "measured.relaxedLumenDiameterMm", "mm"),
    DEPTH_TO_SKIN(About.SEGMENT, "depthToSkinMm", "mm"),
    DEPTH_TO_SKIN_SD(About.SEGMENT, "depthToSkinSdMm", "mm"),
    NERVE(About.SEGMENT, "nerve.name", Kind.WORD),
    NERVE_GAP(About.SEGMENT, "nerve.gapMm", "mm"),
    NERVE_GAP_SD(About.SEGMENT, "nerve.gapSdMm", "mm"),
    REFLUX_TIME(About.SEGMENT, "refluxSeconds", "s"),
    COURSE(About.SEGMENT, "course", Kind.WORD),
    WITHIN_FASCIA(About.SEGMENT, "withinFascia", Kind.FLAG),
    THROMBUS(About.SEGMENT, "thrombus", Kind.WORD),
    EARLIER_TREATMENT(About.SEGMENT, "earlierTreatment", Kind.WORD),
    TOP_TO_DEEP_JUNCTION(About.SEGMENT, "topToDeepJunctionCm", "cm"),
    CHOSEN(About.SEGMENT, "chosen", Kind.WORD);

    /** Whom or what a measure belongs to. */
    enum About {
        PATIENT,
        LIMB,
        SEGMENT
    }

    /** How a value is written. */
    enum Kind {
        QUANTITY,
        FLAG,
        WORD,
        GROUP
    }

    private final About about;
    private final String path;
    private final Kind kind;
    private final Optional<String> unit;

    Measure(About about, String path, String unit) {
        this.about = about;
        this.path = path;
        this.kind = Kind.QUANTITY;
        this.unit = Optional.of(unit);
    }

    Measure(About about, String path, Kind kind) {
        this.about = about;
        this.path = path;
        this.kind = kind;
        this.unit = Optional.empty();
    }

    About about() {
        return about;
    }

    /** Where it goes in the patient, limb or segment of a case, steps parted by dots. */
    String path() {
        return path;
    }

    Kind kind() {
        return kind;
    }

    /** UCUM code a quantity has in a case. */
    String unit() {
        return unit.orElseThrow(() -> new IllegalStateException(this + " is no quantity"));
    }

    /** The kind under which its words stand in the code map. */
    String wordKind() {
        return this == CHOSEN ? Codes.TECHNIQUE : word();
    }

    /** The measure of a word of the code map. */
    static Measure of(String word) {
        return Arrays.stream(values())
                .filter(measure -> measure.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no measure " + word));
    }

    /** The measure that fills a field of a case, if it is measured or asked. */
    static Optional<Measure> at(About about, String path) {
        return Arrays.stream(values())
                .filter(measure -> measure.about == about && measure.path.equals(path))
                .findFirst();
    }
}
