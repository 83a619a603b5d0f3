package org.tunica.store;

import java.util.List;
import java.util.Optional;

/**
 * Advice given, plans, what was delivered, notes and follow-ups. None is ever changed: what is set right is kept as the next
 * one of its kind, and the last one counts.
 */
public interface CaseDocuments {
    /**
     * Keeps a document.
     *
     * @throws org.tunica.casefile.FaultyInput when there is no such version of the case
     */
    KeptDocument keep(Actor by, NewDocument document);

    /** The documents of a kind that were made for a case, first to last. */
    List<KeptDocument> of(String caseRef, DocumentKind kind);

    /** The documents of a kind that were made for any case, the last one first. */
    List<KeptDocument> newest(DocumentKind kind, Page page);

    /** One document. */
    Optional<KeptDocument> one(String caseRef, DocumentKind kind, long number);
}
