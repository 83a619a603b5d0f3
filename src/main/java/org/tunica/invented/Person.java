package org.tunica.invented;

import org.tunica.casefile.Patient;

/**
 * A person that was made up, with the numbers that no past case holds.
 *
 * @param patient as it stands in the past case
 * @param ageRecorded whether the past case gives a band of it
 */
record Person(Patient patient, double ageYears, double weightKg, boolean ageRecorded, boolean weightRecorded) {
    boolean is(String condition) {
        return patient.conditions().orElseThrow().contains(condition);
    }

    boolean allergicTo(String allergen) {
        return patient.allergies().orElseThrow().contains(allergen);
    }
}
