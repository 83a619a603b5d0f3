package org.tunica.invented;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.casefile.Patient;
import org.tunica.knowledge.Distribution;
import org.tunica.knowledge.Knowledge;

/** Makes up a person. */
final class PersonMaker {
    private static final OptionalDouble NONE = OptionalDouble.empty();

    private final Choice<Patient.Sex> sexes;
    private final Curve ageYears;
    private final Map<Patient.Sex, Curve> weightsKg;
    private final Choice<Patient.Anticoagulation> anticoagulation;
    private final Choice<Patient.Mobility> mobility;
    private final Distribution is;
    private final Shares<String> conditions;
    private final Shares<String> allergies;
    private final Distribution unrecorded;

    PersonMaker(Knowledge knowledge) {
        this.sexes = Choice.ofWords(knowledge.invented("invented.sex"), Patient.Sex.class);
        this.ageYears = Curve.of(knowledge.invented("invented.age"));
        Curve female = Curve.of(knowledge.invented("invented.weight.female"));
        Curve male = Curve.of(knowledge.invented("invented.weight.male"));
        this.weightsKg = Map.of(Patient.Sex.FEMALE, female, Patient.Sex.MALE, male, Patient.Sex.OTHER, female);
        this.anticoagulation =
                Choice.ofWords(knowledge.invented("invented.anticoagulation"), Patient.Anticoagulation.class);
        this.mobility = Choice.ofWords(knowledge.invented("invented.mobility"), Patient.Mobility.class);
        this.is = knowledge.invented("invented.person.is");
        this.conditions = Shares.of(knowledge.invented("invented.conditions"), word -> word);
        this.allergies = Shares.of(knowledge.invented("invented.allergies"), word -> word);
        this.unrecorded = knowledge.invented("invented.unrecorded");
    }

    Person from(Draw draw) {
        Patient.Sex sex = sexes.from(draw);
        double years = Math.floor(ageYears.from(draw));
        double kg = Made.rounded(weightsKg.get(sex).from(draw), 0);
        return new Person(
                patient(draw, sex),
                years,
                kg,
                !draw.happens(unrecorded.number("age")),
                !draw.happens(unrecorded.number("weight")));
    }

    private Patient patient(Draw draw, Patient.Sex sex) {
        Optional<Boolean> no = sex == Patient.Sex.MALE ? Optional.empty() : Optional.of(false);
        return new Patient(
                NONE,
                draw.happens(unrecorded.number("sex")) ? Optional.empty() : Optional.of(sex),
                NONE,
                NONE,
                no,
                no,
                draw.happens(unrecorded.number("anticoagulation"))
                        ? Optional.empty()
                        : Optional.of(anticoagulation.from(draw)),
                Optional.of(mobility.from(draw)),
                yes(draw, "needle-averse"),
                new Patient.CanLie(yes(draw, "lies-head-down"), yes(draw, "lies-flat"), yes(draw, "lies-prone")),
                Optional.of(allergies.from(draw)),
                Optional.of(conditions.from(draw)),
                Optional.empty());
    }

    private Optional<Boolean> yes(Draw draw, String what) {
        return Optional.of(draw.happens(is.number(what)));
    }
}
