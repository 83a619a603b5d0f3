package org.tunica.store;

/**
 * A release as it was built.
 *
 * @param digest of its manifest
 * @param files all its files in one text
 */
public record KeptRelease(String version, String digest, String files, Stamp stamp) {}
