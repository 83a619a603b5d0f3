package org.tunica.fhir;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;

/** Whose record it is: one patient, and nothing of another. */
final class Person {
    private static final Set<String> SEXES = Set.of("male", "female", "other");

    private final Optional<Resource> patient;
    private final Notes notes;
    private final Set<String> others = new TreeSet<>();

    Person(Gathered gathered, Notes notes) {
        List<Resource> patients = gathered.of("Patient");
        this.patient = patients.stream().findFirst();
        this.notes = notes;
        patients.stream()
                .skip(1)
                .filter(one -> patients.get(0).keys().stream().noneMatch(one.keys()::contains))
                .forEach(one -> notes.faults()
                        .add(one.part().path(), "the record holds more than one patient; one at a time is read"));
    }

    Optional<Resource> resource() {
        return patient;
    }

    /** Whether a resource is about this patient; one about another makes the whole record a mix-up. */
    boolean owns(Resource resource, String field) {
        String reference = resource.part().at(field).text("reference");
        if (reference.isEmpty()) {
            notes.add(resource.unused("does not say whose it is (" + field + ".reference)"));
            return false;
        }
        if (patient.isPresent() ? patient.get().meant(reference) : sameAsBefore(reference)) {
            return true;
        }
        notes.faults().add(resource.part().at(field).path(), "belongs to another patient");
        return false;
    }

    private boolean sameAsBefore(String reference) {
        others.add(reference);
        return others.size() == 1;
    }

    Optional<String> sex() {
        return patient.map(one -> one.part().text("gender")).filter(SEXES::contains);
    }

    /** The age on a day; nothing when the birth date does not tell it to the year. */
    OptionalInt ageYears(LocalDate day) {
        String born = patient.map(one -> one.part().text("birthDate")).orElse("");
        Optional<When> when = born.isEmpty() ? Optional.empty() : When.of(born);
        if (when.isEmpty()) {
            if (!born.isEmpty()) {
                unused("is not written as a date");
            }
            return OptionalInt.empty();
        }
        int most = Period.between(when.get().from(), day).getYears();
        int least = Period.between(when.get().to(), day).getYears();
        if (when.get().to().isAfter(day)) {
            unused("is after the day of this reading");
        } else if (most == least) {
            return OptionalInt.of(most);
        } else {
            unused("does not tell the age to the year");
        }
        return OptionalInt.empty();
    }

    private void unused(String reason) {
        patient.ifPresent(one -> notes.add(one.unused(one.part().at("birthDate"), reason)));
    }
}
