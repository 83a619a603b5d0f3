package org.tunica.store;

/**
 * A signature under a release.
 *
 * @param body as it was written, character by character
 */
public record KeptSignature(String version, String body, Stamp stamp) {}
