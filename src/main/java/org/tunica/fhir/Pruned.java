package org.tunica.fhir;

import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Takes out of a tree what says nothing: null, empty texts, empty lists and empty objects. The standards forbid them. */
final class Pruned {
    private Pruned() {}

    /** The same tree, changed. */
    static ObjectNode of(ObjectNode tree) {
        prune(tree);
        return tree;
    }

    private static void prune(JsonNode node) {
        if (node instanceof ObjectNode object) {
            for (String name : List.copyOf(object.propertyNames())) {
                prune(object.get(name));
                if (saysNothing(object.get(name))) {
                    object.remove(name);
                }
            }
        } else if (node instanceof ArrayNode array) {
            List<JsonNode> kept = new ArrayList<>();
            array.forEach(element -> {
                prune(element);
                if (!saysNothing(element)) {
                    kept.add(element);
                }
            });
            array.removeAll();
            kept.forEach(array::add);
        }
    }

    private static boolean saysNothing(JsonNode node) {
        return node.isNull()
                || (node.isContainer() && node.isEmpty())
                || (node.isString() && node.stringValue().isEmpty());
    }
}
