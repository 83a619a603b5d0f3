package org.tunica.fhir;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Supplier;
import org.tunica.Tunica;
import org.tunica.casefile.FaultyInput;
import org.tunica.plan.AdviceSoFar;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Answers CDS Hooks 2.0 as a pure function: what came in, a day and names for the cards give what goes out. It never sends
 * system actions, never launches anything by itself and never leaves one way only.
 */
public final class HookService {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    /** The same for every call, so that the same data have the same advice to the last byte. */
    private static final String CASE_REF = "from-record";

    private final Tunica tunica;
    private final Site site;
    private final FhirTranslator translator;
    private final Adviser adviser;

    /** A service that waits for every advice until it is whole. */
    public HookService(Tunica tunica, Site site) {
        this(tunica, site, caseFile -> AdviceSoFar.whole(tunica.advise(caseFile)));
    }

    /** A service that says what there is of an advice when it is asked for. */
    public HookService(Tunica tunica, Site site, Adviser adviser) {
        this.tunica = tunica;
        this.site = site;
        this.adviser = adviser;
        this.translator = new FhirTranslator(tunica, site);
    }

    /** The id under which every hook of this service is called. */
    public static String id() {
        return Discovery.ID;
    }

    /** What is offered at which moment, and what should be sent along. */
    public ObjectNode discovery() {
        return Discovery.document(site.codes());
    }

    /**
     * The answer to a call.
     *
     * @param day to which ages count
     * @param uuids gives each card and suggestion its name
     */
    public HookAnswer answer(HookRequest request, LocalDate day, Supplier<String> uuids) {
        Orders orders = Orders.of(request, site.codes());
        if (request.hook().aboutOrders() && orders.none()) {
            return cards(List.of());
        }
        Sent sent = Sent.of(request);
        if (!sent.missing().isEmpty()) {
            return new HookAnswer.MissingData(outcome(sent.missing()));
        }
        if (!hasSegment(sent.record())) {
            return cards(List.of());
        }
        CardWriter writer = new CardWriter(tunica, site, request, uuids);
        try {
            Translated read = translator.translate("record", sent.record(), day, CASE_REF, sent.withheld());
            return cards(writer.cards(read, sent.troubles(), orders, adviser.advise(read.caseFile())));
        } catch (FaultyInput e) {
            return cards(List.of(writer.unreadable(e.faults())));
        }
    }

    /** Without a segment there is nothing to say, and nothing is said: most patients have none. */
    private boolean hasSegment(JsonNode record) {
        return Gathered.of(record, new Notes()).of("Observation").stream()
                .flatMap(one -> one.part().codings("code").stream())
                .flatMap(code -> site.codes().word(Codes.MEASURE, code).stream())
                .anyMatch(Measure.SEGMENT.word()::equals);
    }

    private static HookAnswer cards(List<ObjectNode> cards) {
        ObjectNode body = NODES.objectNode();
        ArrayNode list = NODES.arrayNode();
        cards.forEach(card -> list.add(Pruned.of(card)));
        body.set("cards", list);
        return new HookAnswer.Cards(body);
    }

    private static ObjectNode outcome(List<String> missing) {
        ObjectNode outcome = NODES.objectNode().put("resourceType", "OperationOutcome");
        ArrayNode issues = outcome.putArray("issue");
        missing.forEach(one -> issues.addObject()
                .put("severity", "error")
                .put("code", "required")
                .put("diagnostics", one));
        return outcome;
    }
}
