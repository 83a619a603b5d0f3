package org.tunica.fhir;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.tunica.Tunica;
import org.tunica.plan.Advice;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.Reason;
import org.tunica.plan.SegmentAdvice;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The ranked options of every segment as a proposal: at most one of them may be taken, and none must. */
final class Proposal {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final Tunica tunica;
    private final Codes codes;
    private final Advice advice;
    private final AdviceResources.Occasion occasion;
    private final ArrayNode contained = NODES.arrayNode();

    Proposal(Tunica tunica, Codes codes, Advice advice, AdviceResources.Occasion occasion) {
        this.tunica = tunica;
        this.codes = codes;
        this.advice = advice;
        this.occasion = occasion;
    }

    /** A RequestGroup; without {@code action} when nothing can be ranked. */
    ObjectNode group() {
        ObjectNode group = NODES.objectNode().put("resourceType", "RequestGroup");
        group.set("contained", contained);
        group.putArray("instantiatesUri")
                .add(Codes.OWN + "release:" + advice.release().version());
        group.put("status", "draft").put("intent", "proposal");
        group.set("subject", AdviceResources.reference(occasion.patient()));
        group.put("authoredOn", occasion.recorded().toString());
        group.putArray("note").addObject().put("text", advice.caution());
        ArrayNode actions = NODES.arrayNode();
        advice.segments().stream()
                .filter(segment -> !ranked(segment).isEmpty())
                .forEach(segment -> actions.add(segment(segment)));
        if (!actions.isEmpty()) {
            group.set("action", actions);
        }
        return group;
    }

    static List<OptionAdvice> ranked(SegmentAdvice segment) {
        return segment.options().stream()
                .filter(option -> option.rank().isPresent())
                .toList();
    }

    private ObjectNode segment(SegmentAdvice segment) {
        ObjectNode action = NODES.objectNode()
                .put("id", segment.ref())
                .put("title", Words.of(segment))
                .put("description", segment.firmness().map(firm -> firm.says()).orElse(""))
                .put("groupingBehavior", "logical-group")
                .put("selectionBehavior", "at-most-one")
                .put("requiredBehavior", "could");
        ArrayNode options = action.putArray("action");
        ranked(segment).forEach(option -> options.add(option(segment, option)));
        return action;
    }

    private ObjectNode option(SegmentAdvice segment, OptionAdvice option) {
        String id = "option-" + segment.ref().replace('_', '-') + "-"
                + option.rank().orElseThrow();
        contained.add(request(id, segment, option));
        ObjectNode action = NODES.objectNode()
                .put("prefix", Integer.toString(option.rank().orElseThrow()))
                .put("title", option.says())
                .put("description", option.standing().word() + ": " + option.why())
                .put("textEquivalent", cautions(option))
                .put("requiredBehavior", "could");
        coded(action.putArray("code").addObject(), Codes.TECHNIQUE, option.technique());
        ArrayNode documents = action.putArray("documentation");
        sources(option)
                .forEach(id2 -> documents
                        .addObject()
                        .put("type", "citation")
                        .put("label", id2)
                        .put("citation", tunica.knowledge().source(id2).cites()));
        action.set("resource", AdviceResources.reference("#" + id));
        return action;
    }

    private static String cautions(OptionAdvice option) {
        return String.join("\n", option.cautions().stream().map(Words::of).toList());
    }

    private static Set<String> sources(OptionAdvice option) {
        Set<String> sources = new LinkedHashSet<>();
        Stream.concat(option.reasons().stream(), option.cautions().stream())
                .filter(reason -> reason.stands() != Reason.Stands.FINDS)
                .forEach(reason -> sources.addAll(List.of(reason.source().split(" "))));
        return sources;
    }

    private ObjectNode request(String id, SegmentAdvice segment, OptionAdvice option) {
        ObjectNode request = NODES.objectNode()
                .put("resourceType", "ServiceRequest")
                .put("id", id)
                .put("status", "draft")
                .put("intent", "proposal");
        coded(request.putObject("code"), Codes.TECHNIQUE, option.technique());
        request.set("subject", AdviceResources.reference(occasion.patient()));
        ArrayNode sites = request.putArray("bodySite");
        coded(sites.addObject(), Codes.VEIN, segment.vein().word());
        coded(sites.addObject(), Codes.LEVEL, segment.level().word());
        coded(sites.addObject(), Codes.SIDE, segment.side().word());
        String setting = Words.setting(option);
        if (!setting.isEmpty()) {
            request.putArray("note")
                    .addObject()
                    .put("text", "computed, to be held against the device's instructions: " + setting);
        }
        return request;
    }

    private void coded(ObjectNode concept, String kind, String word) {
        ArrayNode coding = concept.putArray("coding");
        codes.outward(kind, word)
                .forEach(one -> coding.addObject().put("system", one.system()).put("code", one.code()));
    }
}
