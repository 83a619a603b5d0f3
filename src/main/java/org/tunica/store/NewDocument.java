package org.tunica.store;

/**
 * A document to be kept with a case.
 *
 * @param caseVersion the version of the case it was made from
 * @param body as it was written, character by character
 */
public record NewDocument(DocumentKind kind, String caseRef, long caseVersion, Origin origin, String body) {}
