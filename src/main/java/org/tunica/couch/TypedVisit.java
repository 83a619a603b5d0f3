package org.tunica.couch;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Limb;
import org.tunica.treatment.FollowUp;
import org.tunica.treatment.TreatedSegment;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * The follow-up with the visit that was typed: what is kept of the visits before, and this one in its place among them. A
 * visit of the same day takes the place of the one before.
 */
final class TypedVisit {
    private static final Set<String> OF_TREATED = Set.of("treatedLengthCm", "closure");
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final VisitAsks asks;
    private final Typed typed;
    private final TypedTree written;
    private final List<TreatedSegment> treated;
    private final ObjectNode tree;
    private final Map<String, String> places = new LinkedHashMap<>();

    private TypedVisit(VisitAsks asks, Typed typed, List<TreatedSegment> treated, ObjectNode tree) {
        this.asks = asks;
        this.typed = typed;
        this.written = new TypedTree(typed);
        this.treated = treated;
        this.tree = tree;
    }

    /** @param before the follow-up kept last */
    static TypedVisit of(
            VisitAsks asks, String caseRef, Typed typed, List<TreatedSegment> treated, Optional<JsonNode> before) {
        ObjectNode tree = before.map(kept -> (ObjectNode) kept.deepCopy())
                .orElseGet(
                        () -> NODES.objectNode().put("format", FollowUp.FORMAT).put("caseRef", caseRef));
        TypedVisit made = new TypedVisit(asks, typed, treated, tree);
        Stream.of(Limb.Side.values()).forEach(made::limb);
        return made;
    }

    private void limb(Limb.Side side) {
        ObjectNode visit = NODES.objectNode();
        written.object(visit, asks.limb(), side.word() + ".");
        ArrayNode seen = NODES.arrayNode();
        Map<String, String> inside = new LinkedHashMap<>();
        List<Integer> filled = new ArrayList<>();
        for (int at = 0; at < treated.size(); at++) {
            if (treated.get(at).side() == side) {
                segment(at, seen, inside, filled);
            }
        }
        if (visit.isEmpty() && filled.isEmpty()) {
            return;
        }
        if (!seen.isEmpty()) {
            visit.set("segments", seen);
        }
        written.object(visit, asks.head(), "");
        ObjectNode limb = limbOf(side);
        String path = "limbs[" + index(limb) + "]";
        treated(limb, path, filled);
        String place = path + ".visits[" + put(limb.withArray("visits"), visit) + "]";
        places.put(place + ".daysAfter", "daysAfter");
        inside.forEach((from, to) -> places.put(place + from, to));
        places.put(place + ".", side.word() + ".");
    }

    private void segment(int at, ArrayNode seen, Map<String, String> inside, List<Integer> filled) {
        ObjectNode one = NODES.objectNode();
        String field = Intended.segment(at) + ".";
        written.object(
                one,
                asks.segment().stream()
                        .filter(ask -> !OF_TREATED.contains(ask.field()))
                        .toList(),
                field);
        if (!one.isEmpty()) {
            inside.put(".segments[" + seen.size() + "].", field);
            seen.add(one.put("ref", treated.get(at).ref()));
            filled.add(at);
        }
    }

    /** What every segment looked at was: its length, and by which definition it counts as closed. */
    private void treated(ObjectNode limb, String path, List<Integer> filled) {
        ArrayNode list = limb.withArray("treated");
        for (int at : filled) {
            String ref = treated.get(at).ref();
            int there = 0;
            while (there < list.size()
                    && !list.get(there).path("ref").asString("").equals(ref)) {
                there++;
            }
            ObjectNode one = there < list.size()
                    ? (ObjectNode) list.get(there)
                    : list.addObject().put("ref", ref);
            written.object(
                    one,
                    asks.segment().stream()
                            .filter(ask -> OF_TREATED.contains(ask.field()))
                            .toList(),
                    Intended.segment(at) + ".");
            places.put(path + ".treated[" + there + "].", Intended.segment(at) + ".");
        }
    }

    private ObjectNode limbOf(Limb.Side side) {
        ArrayNode limbs = tree.withArray("limbs");
        for (JsonNode limb : limbs) {
            if (limb.path("side").asString("").equals(side.word())) {
                return (ObjectNode) limb;
            }
        }
        return limbs.addObject().put("side", side.word());
    }

    private int index(ObjectNode limb) {
        ArrayNode limbs = tree.withArray("limbs");
        for (int at = 0; at < limbs.size(); at++) {
            if (limbs.get(at) == limb) {
                return at;
            }
        }
        throw new IllegalStateException("a leg that is not in its follow-up");
    }

    /** In the order of days; returns its place. */
    private static int put(ArrayNode visits, ObjectNode visit) {
        JsonNode day = visit.path("daysAfter");
        int at = 0;
        while (at < visits.size()
                && day.isNumber()
                && visits.get(at).path("daysAfter").decimalValue().compareTo(day.decimalValue()) < 0) {
            at++;
        }
        if (at < visits.size() && visits.get(at).path("daysAfter").equals(day)) {
            visits.set(at, visit);
        } else {
            visits.insert(at, visit);
        }
        return at;
    }

    /** What contradicts itself in the form alone. */
    List<Fault> faults() {
        List<Fault> all = new ArrayList<>(written.faults());
        if (typed.text("daysAfter").isEmpty()) {
            all.add(new Fault("daysAfter", "must be given"));
        }
        if (places.isEmpty()) {
            all.add(new Fault("this visit", "holds nothing yet: record what was seen or asked of at least one leg"));
        }
        return all;
    }

    String json() {
        return tree.toPrettyString() + "\n";
    }

    /** The field in which something stands that has this place in the follow-up. */
    String field(String place) {
        String path = place.replaceFirst("^\\$\\.?", "");
        return places.entrySet().stream()
                .filter(known -> path.startsWith(known.getKey()))
                .findFirst()
                .map(known -> written.field(
                        known.getValue() + path.substring(known.getKey().length())))
                .orElse(path);
    }
}
