package org.tunica.plugin;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** What one scenario looks at. */
public final class Looking {
    private final List<JsonNode> documents = new ArrayList<>();
    private ObjectNode call = new JsonMapper().createObjectNode();

    void at(JsonNode document) {
        documents.add(document);
    }

    void onlyAt(JsonNode document) {
        documents.clear();
        documents.add(document);
    }

    void takes(ObjectNode newCall) {
        call = newCall;
    }

    ObjectNode call() {
        return call;
    }

    List<JsonNode> documents() {
        return documents;
    }

    /** Everything under a path; a scenario about nothing would show nothing. */
    List<JsonNode> each(String path) {
        List<JsonNode> found = Found.each(documents, path);
        assertFalse(found.isEmpty(), "there is no " + path);
        return found;
    }
}
