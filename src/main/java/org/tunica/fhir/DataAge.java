package org.tunica.fhir;

/**
 * When something in the case was recorded.
 *
 * @param path of the value in the case, for example {@code limbs[0].segments[1].wallThicknessMm}
 * @param about the patient, the side of the leg or the name of the segment it belongs to
 * @param says what it is
 * @param when as the record writes it, a day or an instant; empty when the record does not say
 * @param resource where it came from
 */
public record DataAge(String path, String about, String says, String when, String resource) {}
