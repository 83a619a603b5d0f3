package org.tunica.plugin;

import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;

/** What stands under a path of field names in some documents; lists are looked through, a star means every field. */
final class Found {
    private Found() {}

    static List<JsonNode> at(List<JsonNode> documents, String path) {
        List<JsonNode> nodes = documents;
        for (String step : path.split("\\.")) {
            nodes = step(spread(nodes), step);
        }
        return nodes;
    }

    /** The same with lists looked through at the end, too. */
    static List<JsonNode> each(List<JsonNode> documents, String path) {
        return spread(at(documents, path));
    }

    private static List<JsonNode> step(List<JsonNode> nodes, String step) {
        List<JsonNode> next = new ArrayList<>();
        for (JsonNode node : nodes) {
            if (step.equals("*")) {
                node.values().forEach(next::add);
            } else if (node.has(step)) {
                next.add(node.get(step));
            }
        }
        return next;
    }

    private static List<JsonNode> spread(List<JsonNode> nodes) {
        List<JsonNode> spread = new ArrayList<>();
        for (JsonNode node : nodes) {
            if (node.isArray()) {
                node.values().forEach(spread::add);
            } else {
                spread.add(node);
            }
        }
        return spread;
    }
}
