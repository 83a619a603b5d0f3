package org.tunica.fhir;

import tools.jackson.databind.node.ObjectNode;

/** The answer to a call of a hook. */
public sealed interface HookAnswer {
    /** What goes back as JSON. */
    ObjectNode body();

    /** Cards to show, which may be none. */
    record Cards(ObjectNode body) implements HookAnswer {}

    /** Something the advice cannot do without was not sent; an OperationOutcome names it (status 412 of the protocol). */
    record MissingData(ObjectNode body) implements HookAnswer {}
}
