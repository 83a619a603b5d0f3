package org.tunica.casefile;

import java.util.List;

/**
 * One case: a patient, a room and the mapped limbs. Immutable.
 *
 * @param caseRef the name of the case at its home; no name of a person
 * @param patient what is known of the patient
 * @param room what the room holds
 * @param limbs one or two limbs, in file order
 */
public record CaseFile(String caseRef, Patient patient, Room room, List<Limb> limbs) {
    /** The word a case file must carry under {@code format}. */
    public static final String FORMAT = "tunica-case/1";

    public CaseFile {
        limbs = List.copyOf(limbs);
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
        return new CaseReader(known).read(what, bytes);
    }
}
