package org.tunica.fhir;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * What a record system sent with a call, sorted.
 *
 * @param record everything usable as one list
 * @param missing why an advice cannot be given, for each key without which there is none
 * @param troubles the same for keys without which there is one
 * @param withheld the lists of a case of which nothing was sent
 */
record Sent(JsonNode record, List<String> missing, List<String> troubles, Set<String> withheld) {
    static Sent of(HookRequest request) {
        ArrayNode record = JsonNodeFactory.instance.arrayNode();
        List<String> missing = new ArrayList<>();
        List<String> troubles = new ArrayList<>();
        Set<String> withheld = new HashSet<>();
        needed(request, Discovery.PATIENT, Set.of("Patient"), record, missing);
        needed(request, Discovery.SCAN, Set.of("Bundle"), record, missing);
        for (String list : List.of(Discovery.CONDITIONS, Discovery.ALLERGIES)) {
            Prefetched sent = request.prefetched(list, Set.of("Bundle"));
            sent.content().ifPresent(record::add);
            if (!sent.answered()) {
                troubles.add(sent.trouble());
                withheld.add(list);
            }
        }
        return new Sent(record, missing, troubles, withheld);
    }

    /** Without these there is no advice: whose leg it is, and what the scan saw. A scan that found nothing is an answer. */
    private static void needed(
            HookRequest request, String key, Set<String> types, ArrayNode record, List<String> missing) {
        Prefetched sent = request.prefetched(key, types);
        sent.content().ifPresent(record::add);
        if (!sent.answered()) {
            missing.add(sent.trouble());
        } else if (key.equals(Discovery.PATIENT)) {
            person(request, sent, missing);
        }
    }

    private static void person(HookRequest request, Prefetched sent, List<String> missing) {
        String id = sent.content().map(node -> new Part(node, "").text("id")).orElse("");
        if (sent.content().isEmpty()) {
            missing.add("prefetch key patient holds nothing");
        } else if (!id.equals(request.patientId())) {
            missing.add("prefetch key patient holds another patient than context.patientId names");
        }
    }
}
