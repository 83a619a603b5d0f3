package org.tunica.rules;

/** A finding about an option, as a fact of the engine. Public because the engine reads it. */
public record FindingFact(Candidate option, String finding, boolean certain) {}
