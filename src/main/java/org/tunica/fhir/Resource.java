package org.tunica.fhir;

import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * A resource of a record.
 *
 * @param part the resource and where it stands
 * @param keys every reference by which another resource may mean it
 */
record Resource(Part part, Set<String> keys) {
    private static final Pattern ID = Pattern.compile("[A-Za-z0-9.-]{1,64}");

    static Resource of(Part part, String fullUrl) {
        Set<String> keys = new TreeSet<>();
        if (!fullUrl.isEmpty()) {
            keys.add(fullUrl);
        }
        if (ID.matcher(part.text("id")).matches()) {
            keys.add(part.text("resourceType") + "/" + part.text("id"));
        }
        return new Resource(part, keys);
    }

    String type() {
        return part.text("resourceType");
    }

    /** What it is called in messages. */
    String name() {
        String id = part.text("id");
        return Part.shorten(id.isEmpty() ? type() : type() + "/" + id);
    }

    /** Whether a reference means this resource; one with a server in front of it does too. */
    boolean meant(String reference) {
        return keys.stream().anyMatch(key -> reference.equals(key) || reference.endsWith("/" + key));
    }

    Unused unused(String reason) {
        return unused(part, reason);
    }

    Unused unused(Part where, String reason) {
        return new Unused(name(), where.path(), reason);
    }
}
