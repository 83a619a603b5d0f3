package org.tunica.fhir;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * What this service offers a record system. All services share one id: a later moment then replaces the card of an earlier
 * one.
 */
final class Discovery {
    static final String ID = "vein-closure";
    static final String PATIENT = "patient";
    static final String SCAN = "scan";
    static final String CONDITIONS = "conditions";
    static final String ALLERGIES = "allergies";

    private static final String OF_PATIENT = "patient={{context.patientId}}";
    private static final int MOST_OBSERVATIONS = 500;

    private Discovery() {}

    static ObjectNode document(Codes codes) {
        ObjectNode document = JsonNodeFactory.instance.objectNode();
        ArrayNode services = document.putArray("services");
        for (Hook hook : Hook.values()) {
            ObjectNode service = services.addObject()
                    .put("hook", hook.word())
                    .put("title", hook.title())
                    .put("description", hook.description())
                    .put("id", ID);
            ObjectNode prefetch = service.putObject("prefetch");
            prefetch(codes).forEach(prefetch::put);
            service.put(
                    "usageRequirements",
                    "The Observations of the scan must carry codes of this service's code map. Nothing is fetched: what is not"
                            + " prefetched is not known. Nothing sent is stored. Agree before use that the record system calls"
                            + " order-sign: only there is what a rule excludes shown as critical.");
        }
        return document;
    }

    /** Queries within what 2.0 allows: one token of the context, codes by equality, date order, a count. */
    static Map<String, String> prefetch(Codes codes) {
        Map<String, String> prefetch = new LinkedHashMap<>();
        prefetch.put(PATIENT, "Patient/{{context.patientId}}");
        prefetch.put(
                SCAN,
                "Observation?" + OF_PATIENT + "&code=" + asked(codes) + "&_sort=-date&_count=" + MOST_OBSERVATIONS);
        prefetch.put(CONDITIONS, "Condition?" + OF_PATIENT);
        prefetch.put(ALLERGIES, "AllergyIntolerance?" + OF_PATIENT);
        return prefetch;
    }

    /** Every code of a measure but those that are only ever components. */
    private static String asked(Codes codes) {
        List<Measure> never = List.of(Measure.SEX, Measure.SIDE, Measure.VEIN, Measure.LEVEL);
        return Stream.of(Measure.values())
                .filter(measure -> !never.contains(measure))
                .flatMap(measure -> codes.codings(Codes.MEASURE, measure.word()).stream())
                .map(Codes.Coding::toString)
                .collect(Collectors.joining(","));
    }
}
