package org.tunica.store;

/**
 * A past case on its way.
 *
 * @param line the case on one line; empty once it was refused or withdrawn
 */
public record KeptPastCase(String id, PastCaseState state, String line, Stamp stamp) {}
