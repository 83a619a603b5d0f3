package org.tunica.paper;

import java.util.Map;
import java.util.TreeMap;

/** Writes elements that are well-formed as XML and as HTML alike. The one place where text meets markup. */
final class Markup {
    private final StringBuilder out = new StringBuilder();

    /** An element around text. */
    Markup element(String name, Map<String, String> attributes, String text) {
        return open(name, attributes).text(text).close(name);
    }

    /** An element around text. */
    Markup element(String name, String text) {
        return element(name, Map.of(), text);
    }

    /** The start of an element. */
    Markup open(String name, Map<String, String> attributes) {
        out.append('<').append(name);
        new TreeMap<>(attributes)
                .forEach((key, value) -> out.append(' ')
                        .append(key)
                        .append("=\"")
                        .append(escaped(value))
                        .append('"'));
        out.append('>');
        return this;
    }

    /** The start of an element without attributes. */
    Markup open(String name) {
        return open(name, Map.of());
    }

    /** The end of an element; a line break after it, but where it would be a blank in a line of a drawing. */
    Markup close(String name) {
        out.append("</").append(name).append(name.equals("tspan") ? ">" : ">\n");
        return this;
    }

    /** Text. */
    Markup text(String text) {
        out.append(escaped(text));
        return this;
    }

    /** Markup of our own that is known to be well-formed. */
    Markup wellFormed(String markup) {
        out.append(markup);
        return this;
    }

    @Override
    public String toString() {
        return out.toString();
    }

    static String escaped(String text) {
        return Printable.of(text)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}
