package org.tunica.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Sound JSON with values in it that nobody expects there. */
final class OddValues {
    private static final JsonMapper JSON = new JsonMapper();

    private static final List<String> VALUES = List.of(
            "null",
            "true",
            "-1",
            "1e308",
            "5e-324",
            "1e-400",
            "123456789012345678901234567890",
            "\"\"",
            "\"\\u0000\"",
            "\"\\ud800\"",
            "\"\\u202e\"",
            "\"<script>alert(1)</script>\"",
            "\"2026-02-30\"",
            "\"+999999999-12-31T00:00:00Z\"",
            "\"-999999999-01-01T00:00:00-18:00\"",
            "\"Patient/p21\"",
            "\"00000000-0000-0000-0000-000000000000\"",
            "[]",
            "{}",
            "[[[]]]",
            "{\"resourceType\":\"Bundle\",\"entry\":[{}]}",
            "{\"coding\":[{\"system\":7,\"code\":[]}]}",
            "\"" + "x".repeat(11_000) + "\"");

    private OddValues() {}

    /** One to five values of a document changed, taken out or put elsewhere. */
    static String in(String json, Random random) {
        JsonNode tree = JSON.readTree(json);
        for (int changes = 1 + random.nextInt(5); changes > 0; changes--) {
            List<JsonNode> holders = new ArrayList<>();
            collect(tree, holders);
            JsonNode holder = holders.get(random.nextInt(holders.size()));
            if (holder instanceof ObjectNode object && !object.isEmpty()) {
                change(object, random);
            } else if (holder instanceof ArrayNode array && !array.isEmpty()) {
                array.set(random.nextInt(array.size()), odd(random));
            }
        }
        return tree.toString();
    }

    private static void change(ObjectNode object, Random random) {
        List<String> names = List.copyOf(object.propertyNames());
        String name = names.get(random.nextInt(names.size()));
        switch (random.nextInt(3)) {
            case 0 -> object.remove(name);
            case 1 ->
                object.set(
                        names.get(random.nextInt(names.size())),
                        object.get(name).deepCopy());
            default -> object.set(name, odd(random));
        }
    }

    private static JsonNode odd(Random random) {
        return JSON.readTree(VALUES.get(random.nextInt(VALUES.size())));
    }

    private static void collect(JsonNode node, List<JsonNode> holders) {
        if (node.isContainer()) {
            holders.add(node);
            node.forEach(child -> collect(child, holders));
        }
    }
}
