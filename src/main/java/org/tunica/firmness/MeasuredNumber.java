package org.tunica.firmness;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.casefile.Segment;

/** The measurements of a segment that can be off, by their JSON paths without indexes. */
enum MeasuredNumber {
    WALL("limbs.segments.wallThicknessMm", "segment.wallThicknessMm"),
    LUMEN("limbs.segments.lumenDiameterMm", "segment.lumenDiameterMm"),
    DEPTH("limbs.segments.depthToSkinMm", "segment.depthToSkinMm"),
    NERVE_GAP("limbs.segments.nerve.gapMm", "segment.nerveGapMm"),
    LENGTH("limbs.segments.lengthCm", "segment.lengthCm"),
    STRAIGHT("limbs.segments.straightCm", "segment.straightCm"),
    REFLUX("limbs.segments.refluxSeconds", "segment.refluxSeconds"),
    JUNCTION("limbs.segments.topToDeepJunctionCm", "segment.topToDeepJunctionCm"),
    ANKLE_INDEX("limbs.ankleBrachialIndex", "limb.ankleBrachialIndex"),
    WEIGHT("patient.weightKg", "patient.weightKg");

    private final String path;
    private final String fieldId;

    MeasuredNumber(String path, String fieldId) {
        this.path = path;
        this.fieldId = fieldId;
    }

    /** The glossary field it answers. */
    String fieldId() {
        return fieldId;
    }

    /** Whether a heat setting is looked for by it, so that what heat would do is not known before it is recorded. */
    boolean setsHeat() {
        return this == WALL || this == LUMEN || this == DEPTH || this == NERVE_GAP;
    }

    /** The measurement behind a glossary field. */
    static Optional<MeasuredNumber> behind(String fieldId) {
        return Arrays.stream(values())
                .filter(number -> number.fieldId.equals(fieldId))
                .findFirst();
    }

    /** The measurement at a path. */
    static MeasuredNumber at(String path) {
        return Arrays.stream(values())
                .filter(number -> number.path.equals(path))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no measurement at " + path));
    }

    /** JSON path without indexes. */
    String path() {
        return path;
    }

    /** The number as it stands. */
    OptionalDouble in(Situation situation) {
        Segment segment = situation.segment();
        return switch (this) {
            case WALL -> segment.wallThicknessMm();
            case LUMEN -> segment.lumenDiameterMm();
            case DEPTH -> segment.depthToSkinMm();
            case NERVE_GAP -> segment.nerve().gapMm();
            case LENGTH -> segment.lengthCm();
            case STRAIGHT -> segment.straightCm();
            case REFLUX -> segment.refluxSeconds();
            case JUNCTION -> segment.topToDeepJunctionCm();
            case ANKLE_INDEX -> situation.limb().ankleBrachialIndex();
            case WEIGHT -> situation.caseFile().patient().weightKg();
        };
    }

    /** The standard deviation recorded beside it. */
    OptionalDouble deviationIn(Situation situation) {
        Segment segment = situation.segment();
        return switch (this) {
            case WALL -> segment.wallThicknessSdMm();
            case LUMEN -> segment.lumenDiameterSdMm();
            case DEPTH -> segment.depthToSkinSdMm();
            case NERVE_GAP -> segment.nerve().gapSdMm();
            case LENGTH, STRAIGHT, REFLUX, JUNCTION, ANKLE_INDEX, WEIGHT -> OptionalDouble.empty();
        };
    }

    /** The same situation with another number. */
    Situation with(Situation situation, double value) {
        return switch (this) {
            case ANKLE_INDEX -> situation.withAnkleBrachialIndex(value);
            case WEIGHT -> situation.withWeightKg(value);
            case WALL, LUMEN, DEPTH, NERVE_GAP, LENGTH, STRAIGHT, REFLUX, JUNCTION ->
                situation.with(segment(situation.segment(), OptionalDouble.of(value)));
        };
    }

    private Segment segment(Segment s, OptionalDouble value) {
        return new Segment(
                s.ref(),
                s.vein(),
                s.level(),
                this == LENGTH ? value : s.lengthCm(),
                this == STRAIGHT ? value : s.straightCm(),
                this == LUMEN ? value : s.lumenDiameterMm(),
                s.lumenDiameterSdMm(),
                this == WALL ? value : s.wallThicknessMm(),
                s.wallThicknessSdMm(),
                s.measured(),
                this == DEPTH ? value : s.depthToSkinMm(),
                s.depthToSkinSdMm(),
                this == NERVE_GAP
                        ? new Segment.Nerve(s.nerve().name(), value, s.nerve().gapSdMm())
                        : s.nerve(),
                this == REFLUX ? value : s.refluxSeconds(),
                s.course(),
                s.withinFascia(),
                s.thrombus(),
                s.earlierTreatment(),
                this == JUNCTION ? value : s.topToDeepJunctionCm(),
                s.chosen());
    }
}
