package org.tunica.fhir;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.plan.Advice;
import org.tunica.plan.AdviceSoFar;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.OptionStanding;
import org.tunica.plan.SegmentAdvice;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Writes the cards of one call. */
final class CardWriter {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final int MOST_FAULTS = 20;

    private final Tunica tunica;
    private final Site site;
    private final HookRequest request;
    private final Supplier<String> uuids;

    CardWriter(Tunica tunica, Site site, HookRequest request, Supplier<String> uuids) {
        this.tunica = tunica;
        this.site = site;
        this.request = request;
        this.uuids = uuids;
    }

    List<ObjectNode> cards(Translated read, List<String> troubles, Orders orders, AdviceSoFar soFar) {
        Advice advice = soFar.advice();
        CardText text = new CardText(tunica, read, troubles, soFar);
        Trace trace = new Trace(tunica, read, soFar);
        if (!request.hook().aboutOrders()) {
            return List.of(overview(advice, text, trace));
        }
        List<ObjectNode> cards = new ArrayList<>();
        for (Orders.Order order : orders.all()) {
            List<SegmentAdvice> meant =
                    advice.segments().stream().filter(order::means).toList();
            meant.forEach(segment -> cards.add(order(order, segment, text, trace)));
            if (meant.isEmpty()) {
                cards.add(ofNoSegment(order, text, trace));
            }
        }
        return cards;
    }

    /** A record that contradicts itself is told to the person who can mend it. */
    ObjectNode unreadable(List<Fault> faults) {
        String detail = CardText.faults(faults, MOST_FAULTS);
        ObjectNode card = card(
                "The leg vein scan on record cannot be used: " + faults.size()
                        + (faults.size() == 1 ? " fault" : " faults"),
                request.hook().aboutOrders() ? "warning" : "info",
                detail);
        return finished(card, Optional.empty());
    }

    private ObjectNode overview(Advice advice, CardText text, Trace trace) {
        ObjectNode card = card(text.overviewSummary(), "info", text.overview());
        return finished(card, Optional.of(trace.of(advice.segments())));
    }

    private ObjectNode order(Orders.Order order, SegmentAdvice segment, CardText text, Trace trace) {
        Optional<OptionAdvice> ordered = order.technique()
                .flatMap(id -> segment.options().stream()
                        .filter(option -> option.technique().equals(id))
                        .findFirst());
        ObjectNode card = ordered.map(option ->
                        card(text.summary(segment, option), indicator(option.standing()), text.detail(segment, option)))
                .orElseGet(() -> withoutStanding(order, segment, text));
        ArrayNode suggestions = new Suggestions(site.codes(), uuids, request).of(order, segment, ordered);
        if (!suggestions.isEmpty()) {
            card.set("suggestions", suggestions);
            card.put("selectionBehavior", "at-most-one");
        }
        return finished(card, Optional.of(trace.of(List.of(segment))));
    }

    /** The order leaves the technique open, or how it stands is not computed yet. */
    private ObjectNode withoutStanding(Orders.Order order, SegmentAdvice segment, CardText text) {
        return order.technique().flatMap(id -> text.awaited(segment, id)).isPresent()
                ? card(text.awaitedSummary(segment, order.technique().get()), "warning", text.detail(segment))
                : card(text.summary(segment), "info", text.detail(segment));
    }

    private ObjectNode ofNoSegment(Orders.Order order, CardText text, Trace trace) {
        ObjectNode card = card(
                "The drafted closure names a segment that the scan on record does not hold",
                "warning",
                text.noSegment(order));
        return finished(card, Optional.of(trace.of(List.of())));
    }

    /** Nothing is critical while a person is still choosing; before a signature, what a rule excludes is. */
    private String indicator(OptionStanding standing) {
        return switch (standing) {
            case PREFERRED, SUITABLE -> "info";
            case CAREFUL, MEASURE_FIRST, NOT_IN_ROOM -> "warning";
            case EXCLUDED -> request.hook() == Hook.ORDER_SIGN ? "critical" : "warning";
        };
    }

    private ObjectNode card(String summary, String indicator, String detail) {
        ObjectNode card = NODES.objectNode()
                .put("uuid", uuids.get())
                .put("summary", CardText.short139(summary))
                .put("detail", detail)
                .put("indicator", indicator);
        ObjectNode source = card.putObject("source").put("label", "Tunica, open rules for closing leg veins");
        site.pages().ifPresent(address -> source.put("url", address));
        source.putObject("topic")
                .put("system", Codes.OWN + "topic")
                .put("code", "vein-closure")
                .put("display", "Closure of incompetent leg veins");
        return card;
    }

    private ObjectNode finished(ObjectNode card, Optional<ObjectNode> trace) {
        ArrayNode links = card.putArray("links");
        site.pages()
                .ifPresent(address -> links.addObject()
                        .put("label", "Every option with its reasons, in a browser")
                        .put("url", address)
                        .put("type", "absolute"));
        site.smartLaunch()
                .ifPresent(address -> links.addObject()
                        .put("label", "Open the advice for this patient")
                        .put("url", address)
                        .put("type", "smart")
                        .put("appContext", request.hookInstance()));
        ArrayNode reasons = card.putArray("overrideReasons");
        site.codeFile()
                .overrideReasons()
                .forEach(reason -> reasons.addObject()
                        .put("code", reason.code())
                        .put("system", reason.system())
                        .put("display", reason.says()));
        trace.ifPresent(one -> card.putObject("extension").set("org.tunica.trace", one));
        return card;
    }
}
