package org.tunica.store;

/**
 * A document kept with a case.
 *
 * @param number counts from 1 for each case and kind
 */
public record KeptDocument(NewDocument document, long number, Stamp stamp) {}
