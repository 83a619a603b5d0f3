package org.tunica.casefile;

import java.util.List;
import java.util.Optional;

/**
 * One case: a patient, a room and the mapped limbs. Immutable. Written as JSON it can be read again.
 *
 * @param format {@link #FORMAT}
 * @param caseRef the name of the case at its home; no name of a person
 * @param patient what is known of the patient
 * @param room what the room holds
 * @param importance what matters most when it is asked how firm a ranking is, in order; empty for the usual order
 * @param limbs one or two limbs, in file order
 */
public record CaseFile(
        String format,
        String caseRef,
        Patient patient,
        Room room,
        Optional<List<Criterion>> importance,
        List<Limb> limbs) {
    /** The word a case file must carry under {@code format}. */
    public static final String FORMAT = "tunica-case/1";

    /** What a reference looks like: no room for a person's name with blanks, nor for control characters. */
    public static final String REFERENCE = "[A-Za-z0-9][A-Za-z0-9._-]{0,63}";

    /** The most segments one limb may hold. */
    public static final int MOST_SEGMENTS = 40;

    /** Every number a case may hold, by its JSON path without indexes; each needs a plausible range. */
    public static final List<String> NUMBERS = List.of(
            "patient.ageYears",
            "patient.weightKg",
            "patient.heightCm",
            "room.sclerosants.percent",
            "room.tumescent.lidocainePercent",
            "room.freeMinutes",
            "limbs.ankleBrachialIndex",
            "limbs.anklePressureMmHg",
            "limbs.toePressureMmHg",
            "limbs.segments.lengthCm",
            "limbs.segments.straightCm",
            "limbs.segments.lumenDiameterMm",
            "limbs.segments.lumenDiameterSdMm",
            "limbs.segments.wallThicknessMm",
            "limbs.segments.wallThicknessSdMm",
            "limbs.segments.measured.relaxedLumenDiameterMm",
            "limbs.segments.depthToSkinMm",
            "limbs.segments.depthToSkinSdMm",
            "limbs.segments.nerve.gapMm",
            "limbs.segments.nerve.gapSdMm",
            "limbs.segments.refluxSeconds",
            "limbs.segments.topToDeepJunctionCm");

    public CaseFile {
        importance = importance.map(List::copyOf);
        limbs = List.copyOf(limbs);
    }

    /** A case in this format with the usual order of what matters. */
    public CaseFile(String caseRef, Patient patient, Room room, List<Limb> limbs) {
        this(FORMAT, caseRef, patient, room, Optional.empty(), limbs);
    }

    /** The same case with one segment alone; the limbs stay, because what is known of a leg counts for the other too. */
    public CaseFile only(String segmentRef) {
        List<Limb> alone = limbs.stream()
                .map(limb -> new Limb(
                        limb.side(),
                        limb.ceapClass(),
                        limb.ankleBrachialIndex(),
                        limb.anklePressureMmHg(),
                        limb.toePressureMmHg(),
                        limb.deepVeins(),
                        limb.trunkIsMainOutflow(),
                        limb.segments().stream()
                                .filter(segment -> segment.ref().equals(segmentRef))
                                .toList()))
                .toList();
        return new CaseFile(FORMAT, caseRef, patient, room, importance, alone);
    }

    /**
     * Reads a case file in JSON.
     *
     * @param what the name of the input, for messages
     * @param bytes UTF-8 JSON
     * @param known the words and ranges of the knowledge in use
     * @throws FaultyInput with every fault and its JSON path
     */
    public static CaseFile read(String what, byte[] bytes, KnownWords known) {
        return new CaseReader(known, new Faults()).read(what, bytes);
    }

    /**
     * Reads a case that stands inside another file; its faults are noted with theirs.
     *
     * @param reader of the case
     * @param faults those the reader notes, too
     */
    public static CaseFile read(FieldReader reader, Faults faults, KnownWords known) {
        return new CaseReader(known, faults).read(reader);
    }

    /**
     * Reads what a room holds where it stands outside a case.
     *
     * @param reader of the room
     * @param faults those the reader notes, too
     */
    public static Room readRoom(FieldReader reader, Faults faults, KnownWords known) {
        return new CaseReader(known, faults).room(reader);
    }
}
