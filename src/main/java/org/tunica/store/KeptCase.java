package org.tunica.store;

/**
 * One version of a case.
 *
 * @param version counts from 1 for each case
 * @param json as it was saved, character by character
 */
public record KeptCase(String caseRef, long version, String json, Stamp stamp) {}
