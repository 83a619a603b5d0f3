package org.tunica.fhir;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * A piece of a record and where it stands. Whatever the piece is, asking it for something it does not hold gives nothing:
 * records come from elsewhere and are seldom quite as the standard has them.
 */
record Part(JsonNode node, String path) {
    private static final int LONGEST_ECHO = 60;

    Part at(String field) {
        return new Part(node.path(field), path + "." + field);
    }

    boolean present() {
        return !node.isMissingNode() && !node.isNull();
    }

    /** The text of a field; empty when there is none. */
    String text(String field) {
        JsonNode value = node.path(field);
        return value.isString() ? value.stringValue() : "";
    }

    /** The objects of a list; what is none of them is passed over. */
    List<Part> list(String field) {
        List<Part> parts = new ArrayList<>();
        JsonNode list = node.path(field);
        for (int i = 0; list.isArray() && i < list.size(); i++) {
            if (list.get(i).isObject()) {
                parts.add(new Part(list.get(i), path + "." + field + "[" + i + "]"));
            }
        }
        return parts;
    }

    /** The codes of a CodeableConcept in a field, those that name their system. */
    List<Codes.Coding> codings(String field) {
        return at(field).codings();
    }

    /** The codes of this CodeableConcept that name their system. */
    List<Codes.Coding> codings() {
        List<Codes.Coding> codings = new ArrayList<>();
        for (Part coding : list("coding")) {
            if (!coding.text("system").isEmpty() && !coding.text("code").isEmpty()) {
                codings.add(new Codes.Coding(shorten(coding.text("system")), shorten(coding.text("code"))));
            }
        }
        return codings;
    }

    /** The one field whose name starts so, of a choice of types such as {@code value[x]}. */
    Optional<String> choice(String start) {
        return node.isObject()
                ? node.propertyNames().stream()
                        .filter(name -> name.startsWith(start))
                        .filter(name ->
                                name.length() > start.length() && Character.isUpperCase(name.charAt(start.length())))
                        .findFirst()
                : Optional.empty();
    }

    /** A text of the input, short enough for a message. */
    static String shorten(String text) {
        return text.length() <= LONGEST_ECHO ? text : text.substring(0, LONGEST_ECHO) + "...";
    }
}
