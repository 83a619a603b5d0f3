package org.tunica.pastcases;

import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Patient;
import org.tunica.casefile.Room;
import org.tunica.casefile.Segment;

/** What of a case may stand in a past case, field by field; what is not named here does not get in. */
final class CaseParts {
    private static final OptionalDouble DROPPED = OptionalDouble.empty();

    private final Rounding rounding;
    private final References references;

    CaseParts(Rounding rounding, References references) {
        this.rounding = rounding;
        this.references = references;
    }

    CaseFile of(CaseFile caseFile, String id) {
        return new CaseFile(
                CaseFile.FORMAT,
                id,
                patient(caseFile.patient()),
                room(caseFile.room()),
                Optional.empty(),
                caseFile.limbs().stream().map(this::limb).toList());
    }

    private static Patient patient(Patient patient) {
        return new Patient(
                DROPPED,
                patient.sex(),
                DROPPED,
                DROPPED,
                patient.pregnant(),
                patient.breastfeeding(),
                patient.anticoagulation(),
                patient.mobility(),
                patient.needleAversion(),
                new Patient.CanLie(
                        patient.canLie().headDown(),
                        patient.canLie().flat(),
                        patient.canLie().prone()),
                patient.allergies(),
                patient.conditions(),
                Optional.empty());
    }

    private Room room(Room room) {
        return new Room(
                room.devices(),
                room.sclerosants().map(drugs -> drugs.stream().map(this::drug).toList()),
                room.foamGas(),
                room.tumescent()
                        .map(mix -> new Room.Tumescent(
                                rounding.of(Step.STRENGTH, mix.lidocainePercent()), mix.adrenaline(), mix.chilled())),
                room.tiltTable(),
                DROPPED,
                Optional.empty());
    }

    private Room.Sclerosant drug(Room.Sclerosant drug) {
        return new Room.Sclerosant(drug.drug(), rounding.of(Step.STRENGTH, drug.percent()));
    }

    private Limb limb(Limb limb) {
        return new Limb(
                limb.side(),
                limb.ceapClass(),
                rounding.of(Step.INDEX, limb.ankleBrachialIndex()),
                rounding.of(Step.PRESSURE, limb.anklePressureMmHg()),
                rounding.of(Step.PRESSURE, limb.toePressureMmHg()),
                limb.deepVeins(),
                limb.trunkIsMainOutflow(),
                limb.segments().stream().map(this::segment).toList());
    }

    private Segment segment(Segment segment) {
        return new Segment(
                references.of("$.limbs.segments", segment.ref()),
                segment.vein(),
                segment.level(),
                rounding.of(Step.LENGTH, segment.lengthCm()),
                rounding.of(Step.LENGTH, segment.straightCm()),
                rounding.of(Step.LUMEN, segment.lumenDiameterMm()),
                DROPPED,
                rounding.of(Step.WALL, segment.wallThicknessMm()),
                DROPPED,
                new Segment.Measured(
                        segment.measured().posture(),
                        segment.measured().inSpasm(),
                        rounding.of(Step.LUMEN, segment.measured().relaxedLumenDiameterMm())),
                rounding.of(Step.DEPTH, segment.depthToSkinMm()),
                DROPPED,
                new Segment.Nerve(
                        segment.nerve().name(),
                        rounding.of(Step.DEPTH, segment.nerve().gapMm()),
                        DROPPED),
                rounding.of(Step.REFLUX, segment.refluxSeconds()),
                segment.course(),
                segment.withinFascia(),
                segment.thrombus(),
                segment.earlierTreatment(),
                rounding.of(Step.LENGTH, segment.topToDeepJunctionCm()),
                Optional.empty());
    }
}
