package org.tunica.couch;

import java.util.List;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Fault;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * The case that was typed, as a tree for the one reader of cases. What is no number or no known word goes into it as it was
 * typed, so that the reader refuses it at its place. An empty field is unknown and stands nowhere.
 */
final class TypedCase {
    private final Typed typed;
    private final TypedTree written;
    private final ObjectNode tree = JsonNodeFactory.instance.objectNode();

    private TypedCase(Typed typed) {
        this.typed = typed;
        this.written = new TypedTree(typed);
    }

    static TypedCase of(CaseAsks asks, Typed typed) {
        TypedCase made = new TypedCase(typed);
        made.tree.put("format", CaseFile.FORMAT);
        made.written.object(made.tree, asks.head(), "");
        made.written.object(made.tree.putObject("patient"), asks.patient(), "patient.");
        made.written.object(made.tree.putObject("room"), asks.room(), "room.");
        ArrayNode limbs = made.tree.putArray("limbs");
        for (int leg = 0; leg < typed.legs(); leg++) {
            made.leg(limbs.addObject(), asks, leg);
        }
        return made;
    }

    private void leg(ObjectNode limb, CaseAsks asks, int leg) {
        written.object(limb, asks.limb(), Typed.leg(leg) + ".");
        ArrayNode segments = limb.putArray("segments");
        for (int at = 0; at < typed.segments(leg); at++) {
            written.object(segments.addObject(), asks.segment(), Typed.segment(leg, at) + ".");
        }
    }

    /** The JSON of the case. */
    String json() {
        return tree.toPrettyString() + "\n";
    }

    /** What contradicts itself in the form alone, by the names of its fields. */
    List<Fault> faults() {
        return written.faults();
    }

    /** The field of the form in which something stands that has this place in the case. */
    String field(String place) {
        return written.field(place);
    }
}
