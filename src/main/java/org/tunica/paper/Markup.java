package org.tunica.paper;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Writes elements that are well-formed as XML and as HTML alike. The one place where text meets markup. */
final class Markup {
    /**
     * What no page may hold: signs XML forbids, and those that hide or turn the writing around them. The two joiners stay,
     * for several scripts are not written without them.
     */
    private static final Pattern NOT_PRINTING =
            Pattern.compile("[\\p{Cc}\\p{Cs}\\p{Zl}\\p{Zp}\\x{FFFE}\\x{FFFF}[\\p{Cf}&&[^\\x{200C}\\x{200D}\\x{AD}]]]");

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
        return NOT_PRINTING
                .matcher(text)
                .replaceAll(found -> Matcher.quoteReplacement(
                        String.format(Locale.ROOT, "\\u%04x", found.group().codePointAt(0))))
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}
