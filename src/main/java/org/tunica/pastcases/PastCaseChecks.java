package org.tunica.pastcases;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.Patient;
import org.tunica.treatment.DeliveredSegment;
import org.tunica.treatment.DeliveredSession;

/** What must not stand in a past case, and which of its parts must belong together. */
final class PastCaseChecks {
    private static final int FIRST_OF_FOUR_DIGITS = 1000;
    private static final int LAST_OF_FOUR_DIGITS = 9999;

    private PastCaseChecks() {}

    /** A year of four digits, or unknown. */
    static OptionalInt year(FieldReader root) {
        OptionalDouble year = root.number("year");
        if (year.isEmpty()) {
            return OptionalInt.empty();
        }
        int whole = (int) year.getAsDouble();
        if (whole != year.getAsDouble() || whole < FIRST_OF_FOUR_DIGITS || whole > LAST_OF_FOUR_DIGITS) {
            root.fault("year", "must be a year of four digits");
        }
        return OptionalInt.of(whole);
    }

    static void check(WaitingCase read, NoteScrubber scrubber, Faults faults) {
        notes(read, scrubber, faults);
        check(read.caseFile(), read.id(), faults);
        sameReference(read.id(), "$.followUp", read.followUp().caseRef(), faults);
        for (int i = 0; i < read.delivered().size(); i++) {
            String place = "$.delivered[" + i + "]";
            sameReference(read.id(), place, read.delivered().get(i).caseRef(), faults);
            session(read.delivered().get(i), place, faults);
        }
    }

    /** The same of the case alone. */
    static void check(CaseFile caseFile, String id, Faults faults) {
        patient(caseFile.patient(), faults);
        none(
                "$.caseFile.room.costClasses",
                "it tells of the site",
                caseFile.room().costClasses(),
                faults);
        sameReference(id, "$.caseFile", caseFile.caseRef(), faults);
    }

    /** The text itself stays out of the message: it could hold what it must not. */
    private static void notes(WaitingCase read, NoteScrubber scrubber, Faults faults) {
        for (int i = 0; i < read.notes().size(); i++) {
            if (!scrubber.clean(read.notes().get(i))) {
                faults.add(
                        "$.notes[" + i + "]",
                        "holds what the anonymiser would take out: only words of knowledge/vocabulary.yaml and numbers with units stay");
            }
        }
    }

    private static void sameReference(String id, String place, String caseRef, Faults faults) {
        if (!caseRef.equals(id)) {
            faults.add(place + ".caseRef", "must be the id of the past case, \"" + id + "\"");
        }
    }

    private static void patient(Patient patient, Faults faults) {
        String place = "$.caseFile.patient.";
        none(place + "ageYears", "give ageBandYears instead", patient.ageYears(), faults);
        none(place + "weightKg", "give weightBandKg instead", patient.weightKg(), faults);
        none(place + "heightCm", "a past case has none", patient.heightCm(), faults);
    }

    private static void session(DeliveredSession session, String place, Faults faults) {
        none(place + ".date", "days count from the procedure", session.date(), faults);
        none(place + ".people", "a past case names nobody", session.people(), faults);
        text(place + ".indication", session.indication(), faults);
        text(place + ".aftercare.compression", session.aftercare().compression(), faults);
        text(place + ".aftercare.prophylaxis", session.aftercare().prophylaxis(), faults);
        text(place + ".aftercare.followUp", session.aftercare().followUp(), faults);
        for (int i = 0; i < session.segments().size(); i++) {
            DeliveredSegment segment = session.segments().get(i);
            text(place + ".segments[" + i + "].incidentNote", segment.incidentNote(), faults);
            text(place + ".segments[" + i + "].notDone", segment.notDone(), faults);
        }
    }

    private static void text(String place, Optional<String> text, Faults faults) {
        none(place, "free text belongs into notes, through the anonymiser", text, faults);
    }

    private static void none(String place, String says, OptionalDouble number, Faults faults) {
        none(place, says, number.isPresent() ? Optional.of(number) : Optional.empty(), faults);
    }

    private static void none(String place, String says, Optional<?> value, Faults faults) {
        value.ifPresent(given -> faults.add(place, "must not be given: " + says));
    }
}
