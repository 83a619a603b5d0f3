package org.tunica.couch;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.session.SessionPlan;
import org.tunica.treatment.DeliveredSession;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The record of a delivery that was typed, as the JSON its reader takes. */
final class TypedDelivery {
    private static final String NOT_DONE = ".notDone";

    private final TypedTree written;
    private final ObjectNode tree = JsonNodeFactory.instance.objectNode();
    private final List<Fault> unconfirmed = new ArrayList<>();

    private TypedDelivery(Typed typed) {
        this.written = new TypedTree(typed);
    }

    /** By which the values of a segment are confirmed. */
    static String confirm(int at) {
        return "confirmed-" + at;
    }

    /** @param intended by the names of fields; of a segment that was not done, what still stands as intended is left out */
    static TypedDelivery of(
            DeliveredAsks asks,
            SessionPlan.Session session,
            String caseRef,
            Typed typed,
            Map<String, String> intended) {
        TypedDelivery made = new TypedDelivery(withoutUndone(typed, intended));
        made.tree.put("format", DeliveredSession.FORMAT).put("caseRef", caseRef).put("session", session.number());
        made.written.object(made.tree, asks.head(), "");
        ArrayNode segments = made.tree.putArray("segments");
        for (int at = 0; at < session.steps().size(); at++) {
            String path = Intended.segment(at);
            made.written.object(
                    segments.addObject().put("ref", session.steps().get(at).ref()), asks.segment(), path + ".");
            if (typed.text(confirm(at)).isEmpty()) {
                made.unconfirmed.add(new Fault(path, "its values are not confirmed; look through them and say so"));
            }
        }
        return made;
    }

    private static Typed withoutUndone(Typed typed, Map<String, String> intended) {
        Map<String, List<String>> fields = new LinkedHashMap<>(typed.fields());
        intended.forEach((field, value) -> {
            String segment = field.substring(0, field.indexOf('.'));
            if (!typed.text(segment + NOT_DONE).isEmpty() && typed.text(field).equals(value)) {
                fields.remove(field);
            }
        });
        return new Typed(fields);
    }

    /** What is not confirmed, and what contradicts itself in the form alone. */
    List<Fault> faults() {
        List<Fault> all = new ArrayList<>(unconfirmed);
        all.addAll(written.faults());
        return all;
    }

    /** Everything its reader finds, by the names of fields. */
    List<Fault> read(Tunica tunica) {
        try {
            tunica.treatments().readDelivered("record", json().getBytes(StandardCharsets.UTF_8));
            return List.of();
        } catch (FaultyInput e) {
            return e.faults().stream()
                    .map(fault -> new Fault(field(fault.place()), fault.says()))
                    .toList();
        }
    }

    String json() {
        return tree.toPrettyString() + "\n";
    }

    String field(String place) {
        return written.field(place);
    }
}
