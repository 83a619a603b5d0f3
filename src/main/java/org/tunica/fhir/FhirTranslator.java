package org.tunica.fhir;

import java.time.LocalDate;
import java.util.Set;
import org.tunica.Tunica;
import org.tunica.casefile.JsonText;
import tools.jackson.databind.JsonNode;

/** Reads a patient's record in FHIR R4 as a case. Nothing is guessed: what cannot be used is listed with its reason. */
public final class FhirTranslator {
    private final Tunica tunica;
    private final Site site;

    public FhirTranslator(Tunica tunica, Site site) {
        this.tunica = tunica;
        this.site = site;
    }

    /**
     * The case of a record.
     *
     * @param what the name of the input, for messages
     * @param bytes JSON in UTF-8: a Bundle, a list of resources, or a list of Bundles
     * @param day on which it is read; an age counts to it
     * @param caseRef the name of the case; no name of a person
     * @throws org.tunica.casefile.FaultyInput with every fault: no JSON, no segment, a mix-up of patients, values that
     *     contradict each other or lie outside what is plausible
     */
    public Translated translate(String what, byte[] bytes, LocalDate day, String caseRef) {
        return translate(what, JsonText.parseRecord(what, bytes), day, caseRef);
    }

    /** The case of a record that is a tree already. */
    public Translated translate(String what, JsonNode record, LocalDate day, String caseRef) {
        return translate(what, record, day, caseRef, Set.of());
    }

    /**
     * As much of a case as a record gives, for a person to complete: it may lack what a case cannot do without.
     *
     * @throws org.tunica.casefile.FaultyInput with every fault: no record, a mix-up of patients, values that contradict each other
     */
    public TakenOver takeOver(String what, JsonNode record, LocalDate day, String caseRef) {
        return new RecordReading(tunica.knowledge(), site, day, Set.of()).takeOver(what, record, caseRef);
    }

    /**
     * The case of a part of a record.
     *
     * @param withheld the lists (allergies, conditions) that were not given, so that none in them means nothing
     */
    Translated translate(String what, JsonNode record, LocalDate day, String caseRef, Set<String> withheld) {
        return new RecordReading(tunica.knowledge(), site, day, withheld).read(what, record, caseRef);
    }
}
