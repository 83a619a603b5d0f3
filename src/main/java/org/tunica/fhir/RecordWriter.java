package org.tunica.fhir;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.JsonText;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Writes a case as the record it could have come from: an example for those who connect a record system, and the way back
 * of {@link FhirTranslator}. What the room holds is no part of a record.
 */
public final class RecordWriter {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final String PATIENT = "Patient/patient";

    /** An address that belongs to nobody (RFC 2606): references inside a Bundle resolve against the address of their holder. */
    private static final String BASE = "https://records.example/fhir/";

    private final String effective;
    private final ArrayNode entries = NODES.arrayNode();

    private RecordWriter(String effective) {
        this.effective = effective;
    }

    /**
     * A case as a Bundle of the type {@code collection}.
     *
     * @param effective day or instant on which everything in it counts as measured
     */
    public static ObjectNode bundle(Tunica tunica, CaseFile caseFile, String effective) {
        RecordWriter writer = new RecordWriter(effective);
        writer.write(JsonText.parse("case", tunica.toJson(caseFile).getBytes(StandardCharsets.UTF_8)));
        ObjectNode bundle = NODES.objectNode().put("resourceType", "Bundle").put("type", "collection");
        bundle.set("entry", writer.entries);
        return bundle;
    }

    private void write(JsonNode root) {
        JsonNode patient = root.path("patient");
        ObjectNode person = entry("Patient", "patient");
        if (patient.path("sex").isString()) {
            person.set("gender", patient.path("sex"));
        }
        for (Measure measure : Measure.values()) {
            boolean own = measure.about() == Measure.About.PATIENT && measure != Measure.SEX;
            if (own && !CaseAssembly.complete(measure)) {
                at(patient, measure.path())
                        .ifPresent(value -> value(observation(measure, measure.word()), measure, value));
            }
        }
        if (patient.path("preferences").isArray()) {
            wish(patient, Measure.AVOID_NEEDLES);
            wish(patient, Measure.AVOID_REPEAT);
        }
        history(patient, "conditions", Measure.CONDITIONS_COMPLETE, "Condition", "subject");
        history(patient, "allergies", Measure.ALLERGIES_COMPLETE, "AllergyIntolerance", "patient");
        root.path("limbs").forEach(this::limb);
    }

    private void wish(JsonNode patient, Measure wish) {
        boolean has = patient.path("preferences")
                .valueStream()
                .anyMatch(one -> one.stringValue().equals(wish.word()));
        value(observation(wish, wish.word()), wish, NODES.booleanNode(has));
    }

    /** A list that is known: that it is complete, and each entry of it. */
    private void history(JsonNode patient, String list, Measure complete, String type, String owner) {
        if (!patient.path(list).isArray()) {
            return;
        }
        value(observation(complete, complete.word()), complete, NODES.booleanNode(true));
        patient.path(list).forEach(word -> {
            ObjectNode entry = entry(type, word.stringValue());
            String terms = "http://terminology.hl7.org/CodeSystem/"
                    + (type.equals("Condition") ? "condition" : "allergyintolerance");
            coded(entry.putObject("clinicalStatus"), terms + "-clinical", "active");
            coded(
                    entry.putObject("verificationStatus"),
                    terms + (type.equals("Condition") ? "-ver-status" : "-verification"),
                    "confirmed");
            own(
                    entry.putObject("code"),
                    type.equals("Condition") ? Codes.CONDITION : Codes.ALLERGY,
                    word.stringValue());
            entry.putObject(owner).put("reference", PATIENT);
        });
    }

    private void limb(JsonNode limb) {
        JsonNode side = limb.path("side");
        for (Measure measure : Measure.values()) {
            if (measure.about() == Measure.About.LIMB) {
                at(limb, measure.path()).ifPresent(value -> {
                    ObjectNode observation = observation(measure, side.stringValue() + "-" + measure.word());
                    value(observation, measure, value);
                    component(observation, Measure.SIDE, side);
                });
            }
        }
        limb.path("segments").forEach(segment -> segment(side, segment));
    }

    private void segment(JsonNode side, JsonNode segment) {
        String ref = segment.path("ref").stringValue();
        ObjectNode observation = observation(Measure.SEGMENT, "segment-" + ref.replace('_', '-'));
        observation
                .putArray("identifier")
                .addObject()
                .put("system", Codes.OWN + "segment")
                .put("value", ref);
        component(observation, Measure.SIDE, side);
        for (Measure measure : Measure.values()) {
            if (measure.about() == Measure.About.SEGMENT && measure.kind() != Measure.Kind.GROUP) {
                at(segment, measure.path()).ifPresent(value -> component(observation, measure, value));
            }
        }
    }

    private ObjectNode observation(Measure measure, String id) {
        ObjectNode observation = entry("Observation", id).put("status", "final");
        own(observation.putObject("code"), Codes.MEASURE, measure.word());
        observation.putObject("subject").put("reference", PATIENT);
        return observation.put("effectiveDateTime", effective);
    }

    private static void component(ObjectNode observation, Measure measure, JsonNode value) {
        ObjectNode component = observation.withArray("component").addObject();
        own(component.putObject("code"), Codes.MEASURE, measure.word());
        value(component, measure, value);
    }

    private static void value(ObjectNode carrier, Measure measure, JsonNode value) {
        switch (measure.kind()) {
            case QUANTITY -> {
                ObjectNode quantity = carrier.putObject("valueQuantity");
                quantity.set("value", value);
                quantity.put("unit", measure.unit()).put("system", Ucum.SYSTEM).put("code", measure.unit());
            }
            case FLAG -> carrier.set("valueBoolean", value);
            case WORD -> own(carrier.putObject("valueCodeableConcept"), measure.wordKind(), value.stringValue());
            case GROUP -> throw new IllegalArgumentException("a group has no value");
        }
    }

    private ObjectNode entry(String type, String id) {
        ObjectNode entry = entries.addObject().put("fullUrl", BASE + type + "/" + id);
        return entry.putObject("resource").put("resourceType", type).put("id", id);
    }

    private static void own(ObjectNode concept, String kind, String word) {
        coded(concept, Codes.OWN + kind, word);
    }

    private static void coded(ObjectNode concept, String system, String code) {
        concept.putArray("coding").addObject().put("system", system).put("code", code);
    }

    private static Optional<JsonNode> at(JsonNode holder, String path) {
        JsonNode found = holder.at("/" + path.replace('.', '/'));
        return found.isMissingNode() ? Optional.empty() : Optional.of(found);
    }
}
