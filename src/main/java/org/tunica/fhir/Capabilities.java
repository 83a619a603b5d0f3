package org.tunica.fhir;

import java.util.Arrays;
import java.util.Optional;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** What a server of this program can do with FHIR R4, in the words of the standard; no more and no less is there. */
public final class Capabilities {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    /** Since when the operations are as they are. */
    private static final String SINCE = "2026-11-27";

    private final String base;

    /** @param base address of the FHIR part of a server, without a slash at the end */
    public Capabilities(String base) {
        this.base = base;
    }

    /** The operations. */
    enum Operation {
        ADVICE(
                "closure-advice",
                "ClosureAdvice",
                "Advice on closing the leg veins of one patient: a Bundle with the patient and the scan in, a Bundle with"
                        + " GuidanceResponse, RequestGroup, Provenance and AuditEvent out. Nothing is kept. Status in-progress"
                        + " means that settings are still being computed: ask again.",
                "Bundle"),
        CASE(
                "closure-case",
                "ClosureCase",
                "How a record is understood: the same Bundle in; out come the case as JSON and what of the record was not"
                        + " used. Nothing is kept.",
                "Parameters");

        private final String code;
        private final String name;
        private final String says;
        private final String gives;

        Operation(String code, String name, String says, String gives) {
            this.code = code;
            this.name = name;
            this.says = says;
            this.gives = gives;
        }
    }

    /** The CapabilityStatement. */
    public ObjectNode statement() {
        ObjectNode statement = NODES.objectNode()
                .put("resourceType", "CapabilityStatement")
                .put("status", "draft")
                .put("experimental", true)
                .put("date", SINCE)
                .put("kind", "instance")
                .put("fhirVersion", "4.0.1");
        statement.putObject("software").put("name", "Tunica");
        statement
                .putObject("implementation")
                .put("description", "Advice on closing incompetent leg veins; stores no resource")
                .put("url", base);
        statement.putArray("format").add("application/fhir+json");
        statement.putArray("rest").add(rest());
        return statement;
    }

    private ObjectNode rest() {
        ObjectNode rest = NODES.objectNode()
                .put("mode", "server")
                .put("documentation", "Two operations and their definitions; no search, no other resource.");
        rest.putObject("security")
                .put(
                        "description",
                        "Operations want a signed token (JWT, ES384 or RS384) for this address, as CDS Hooks 2.0 has it.");
        rest.putArray("resource")
                .addObject()
                .put("type", "OperationDefinition")
                .putArray("interaction")
                .addObject()
                .put("code", "read");
        ArrayNode operations = rest.putArray("operation");
        for (Operation operation : Operation.values()) {
            operations
                    .addObject()
                    .put("name", operation.code)
                    .put("definition", base + "/OperationDefinition/" + operation.code);
        }
        return rest;
    }

    /** The definition of an operation by its id. */
    public Optional<ObjectNode> definition(String id) {
        return Arrays.stream(Operation.values())
                .filter(operation -> operation.code.equals(id))
                .findFirst()
                .map(this::definition);
    }

    private ObjectNode definition(Operation operation) {
        ObjectNode definition = NODES.objectNode()
                .put("resourceType", "OperationDefinition")
                .put("id", operation.code)
                .put("url", base + "/OperationDefinition/" + operation.code)
                .put("name", operation.name)
                .put("status", "draft")
                .put("experimental", true)
                .put("kind", "operation")
                .put("date", SINCE)
                .put("description", operation.says)
                .put("affectsState", false)
                .put("code", operation.code)
                .put("system", true)
                .put("type", false)
                .put("instance", false);
        ArrayNode parameters = definition.putArray("parameter");
        parameter(parameters, "record", "in", "Bundle");
        parameter(parameters, "return", "out", operation.gives);
        return definition;
    }

    private static void parameter(ArrayNode parameters, String name, String use, String type) {
        parameters
                .addObject()
                .put("name", name)
                .put("use", use)
                .put("min", 1)
                .put("max", "1")
                .put("type", type);
    }
}
