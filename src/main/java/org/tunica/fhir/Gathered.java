package org.tunica.fhir;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/** The resources of a record: those of a Bundle, of a list, or of a list of Bundles. */
final class Gathered {
    /** The most resources read of one record; a patient with both legs scanned ten times has some hundred. */
    static final int MOST_RESOURCES = 5_000;

    private final Notes notes;
    private final List<Resource> resources = new ArrayList<>();
    private final Map<String, Resource> byKey = new HashMap<>();

    private Gathered(Notes notes) {
        this.notes = notes;
    }

    static Gathered of(JsonNode tree, Notes notes) {
        Gathered gathered = new Gathered(notes);
        gathered.take(new Part(tree, "$"), "", true);
        return gathered;
    }

    private void take(Part part, String fullUrl, boolean outermost) {
        if (part.node().isArray() && outermost) {
            for (int i = 0; i < part.node().size(); i++) {
                take(new Part(part.node().get(i), part.path() + "[" + i + "]"), "", false);
            }
        } else if (part.text("resourceType").equals("Bundle")) {
            for (Part entry : part.list("entry")) {
                single(entry.at("resource"), entry.text("fullUrl"));
            }
        } else {
            single(part, fullUrl);
        }
    }

    private void single(Part part, String fullUrl) {
        Resource resource = Resource.of(part, fullUrl);
        if (!part.present()) {
            notes.add(new Unused("entry", part.path(), "holds no resource"));
        } else if (resource.type().isEmpty()) {
            notes.add(new Unused("entry", part.path(), "is no resource: it names no resourceType"));
        } else if (resources.size() == MOST_RESOURCES) {
            notes.faults().add(part.path(), "the record holds more than " + MOST_RESOURCES + " resources");
            notes.throwIfFaulty("record");
        } else {
            resources.add(resource);
            resource.keys().forEach(key -> byKey.putIfAbsent(key, resource));
        }
    }

    List<Resource> all() {
        return resources;
    }

    List<Resource> of(String type) {
        return resources.stream().filter(one -> one.type().equals(type)).toList();
    }

    /** The resource a reference means: by its address, or by type and id behind the address of a server. */
    Optional<Resource> meantBy(String reference) {
        Resource exact = byKey.get(reference);
        return Optional.ofNullable(exact == null ? byKey.get(typeAndId(reference)) : exact);
    }

    private static String typeAndId(String reference) {
        int id = reference.lastIndexOf('/');
        return id < 0 ? reference : reference.substring(reference.lastIndexOf('/', id - 1) + 1);
    }
}
