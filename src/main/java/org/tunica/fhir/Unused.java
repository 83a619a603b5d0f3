package org.tunica.fhir;

/**
 * Something of a record that did not go into the case.
 *
 * @param resource which resource, for example {@code Observation/scan-1}
 * @param path where in the input it stands
 * @param reason why it was not used
 */
public record Unused(String resource, String path, String reason) {
    @Override
    public String toString() {
        return resource + " (" + path + "): " + reason;
    }
}
