package org.tunica.fhir;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import tools.jackson.databind.JsonNode;

/**
 * What a record system sent for one prefetch key. It may send nothing, nothing found, or something else altogether.
 *
 * @param content what was found; empty when nothing was or it is not what was asked for
 * @param trouble why there is no usable content; empty when there is, or when nothing was found
 */
record Prefetched(Optional<JsonNode> content, String trouble) {
    /** Whether the record system answered what was asked, if only that there is nothing. */
    boolean answered() {
        return trouble.isEmpty();
    }

    static Prefetched absent(String key) {
        return new Prefetched(Optional.empty(), "prefetch key " + key + " was not sent");
    }

    /** What was sent for a key, held against the types of resource it may be. */
    static Prefetched of(String key, JsonNode sent, Set<String> types) {
        if (sent.isNull()) {
            return new Prefetched(Optional.empty(), "");
        }
        if (!sent.isObject()) {
            return bad(key, kind(sent));
        }
        Part part = new Part(sent, key);
        String type = part.text("resourceType");
        if (type.equals("OperationOutcome")) {
            return bad(key, "an error of the record system instead: " + RecordReading.problem(part));
        }
        if (!types.contains(type)) {
            return bad(key, type.isEmpty() ? "an object that is no resource" : "a " + Part.shorten(type));
        }
        if (part.list("link").stream().anyMatch(link -> link.text("relation").equals("next"))) {
            return bad(key, "only the first page of what was found");
        }
        return new Prefetched(Optional.of(sent), "");
    }

    private static Prefetched bad(String key, String holds) {
        return new Prefetched(Optional.empty(), "prefetch key " + key + " holds " + holds);
    }

    private static String kind(JsonNode sent) {
        if (!sent.isString()) {
            return sent.isArray() ? "a list that is no Bundle" : "a bare value";
        }
        String text = sent.stringValue().strip().toLowerCase(Locale.ROOT);
        return text.startsWith("<!doctype html") || text.startsWith("<html")
                ? "a web page (HTML), probably an error page of the record system"
                : "a text that is no resource";
    }
}
