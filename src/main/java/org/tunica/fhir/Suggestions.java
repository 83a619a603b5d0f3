package org.tunica.fhir;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.OptionStanding;
import org.tunica.plan.SegmentAdvice;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** What a person may do about a card with one click, if they like; at most one, none is marked as the one to take. */
final class Suggestions {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final int MOST_ALTERNATIVES = 3;

    private final Codes codes;
    private final Supplier<String> uuids;
    private final HookRequest request;

    Suggestions(Codes codes, Supplier<String> uuids, HookRequest request) {
        this.codes = codes;
        this.uuids = uuids;
        this.request = request;
    }

    ArrayNode of(Orders.Order order, SegmentAdvice segment, Optional<OptionAdvice> ordered) {
        ArrayNode suggestions = NODES.arrayNode();
        boolean stands = ordered.isPresent() && ordered.get().standing().compareTo(OptionStanding.SUITABLE) <= 0;
        if (!stands && !order.id().isEmpty()) {
            Proposal.ranked(segment).stream()
                    .filter(option -> ordered.isEmpty()
                            || !option.technique().equals(ordered.get().technique()))
                    .limit(MOST_ALTERNATIVES)
                    .forEach(option -> suggestions.add(instead(order, segment, option)));
        }
        boolean waits =
                segment.options().stream().anyMatch(option -> option.standing() == OptionStanding.MEASURE_FIRST);
        if (waits) {
            suggestions.add(scan(segment));
        }
        return suggestions;
    }

    /** The whole draft with another technique: an update replaces the resource it names. */
    private ObjectNode instead(Orders.Order order, SegmentAdvice segment, OptionAdvice option) {
        ObjectNode changed = (ObjectNode) order.draft().deepCopy();
        changed.remove("code");
        coded(changed.putObject("code"), Codes.TECHNIQUE, option.technique());
        return suggestion(
                "Change the draft for " + segment.ref() + " to " + option.says() + " ("
                        + option.standing().word() + ")",
                "update",
                "Replaces the technique in the drafted order",
                changed);
    }

    private ObjectNode scan(SegmentAdvice segment) {
        ObjectNode scan = NODES.objectNode()
                .put("resourceType", "ServiceRequest")
                .put("status", "draft")
                .put("intent", "proposal");
        coded(scan.putObject("code"), Codes.ORDER, "duplex-scan");
        scan.set("subject", AdviceResources.reference("Patient/" + request.patientId()));
        ArrayNode sites = scan.putArray("bodySite");
        coded(sites.addObject(), Codes.VEIN, segment.vein().word());
        coded(sites.addObject(), Codes.LEVEL, segment.level().word());
        coded(sites.addObject(), Codes.SIDE, segment.side().word());
        return suggestion(
                "Draft a duplex scan of " + segment.ref() + " for what is missing",
                "create",
                "Adds a draft order for a duplex scan of this segment",
                scan);
    }

    private ObjectNode suggestion(String label, String type, String description, ObjectNode resource) {
        ObjectNode suggestion = NODES.objectNode().put("label", label).put("uuid", uuids.get());
        suggestion
                .putArray("actions")
                .addObject()
                .put("type", type)
                .put("description", description)
                .set("resource", resource);
        return suggestion;
    }

    private void coded(ObjectNode concept, String kind, String word) {
        ArrayNode coding = concept.putArray("coding");
        List<Codes.Coding> outward = codes.outward(kind, word);
        outward.forEach(one -> coding.addObject().put("system", one.system()).put("code", one.code()));
    }
}
