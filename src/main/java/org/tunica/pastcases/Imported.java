package org.tunica.pastcases;

/**
 * What an import brought.
 *
 * @param cases brought in
 * @param before cases that were there already
 * @param digest {@code sha256:} and the digest of the base as it is now
 */
public record Imported(long cases, long before, String digest) {}
