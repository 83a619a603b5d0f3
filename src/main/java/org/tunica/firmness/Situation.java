package org.tunica.firmness;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Patient;
import org.tunica.casefile.Segment;

/** A segment in its limb and case, as recorded or with other numbers. */
record Situation(CaseFile caseFile, Limb limb, Segment segment) {

    /** Every segment of a case in its order. */
    static List<Situation> of(CaseFile caseFile) {
        List<Situation> all = new ArrayList<>();
        for (Limb limb : caseFile.limbs()) {
            limb.segments().forEach(segment -> all.add(new Situation(caseFile, limb, segment)));
        }
        return all;
    }

    Situation with(Segment other) {
        return new Situation(caseFile, limb, other);
    }

    /** The same with another ankle-brachial index. */
    Situation withAnkleBrachialIndex(double index) {
        Limb other = new Limb(
                limb.side(),
                limb.ceapClass(),
                OptionalDouble.of(index),
                limb.anklePressureMmHg(),
                limb.toePressureMmHg(),
                limb.deepVeins(),
                limb.trunkIsMainOutflow(),
                limb.segments());
        return new Situation(caseFile, other, segment);
    }

    /** The same with another body weight. */
    Situation withWeightKg(double weightKg) {
        Patient p = caseFile.patient();
        Patient other = new Patient(
                p.ageYears(),
                p.sex(),
                OptionalDouble.of(weightKg),
                p.heightCm(),
                p.pregnant(),
                p.breastfeeding(),
                p.anticoagulation(),
                p.mobility(),
                p.needleAversion(),
                p.canLie(),
                p.allergies(),
                p.conditions(),
                p.preferences());
        CaseFile changed = new CaseFile(
                caseFile.format(), caseFile.caseRef(), other, caseFile.room(), caseFile.importance(), caseFile.limbs());
        return new Situation(changed, limb, segment);
    }
}
