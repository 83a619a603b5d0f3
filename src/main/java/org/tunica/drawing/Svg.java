package org.tunica.drawing;

import java.io.StringWriter;
import java.util.function.Consumer;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** One SVG element being written. Escaping is left to the platform's writer. */
final class Svg {
    private static final String NAMESPACE = "http://www.w3.org/2000/svg";

    private final XMLStreamWriter xml;

    private Svg(XMLStreamWriter xml) {
        this.xml = xml;
    }

    /** What an element looks like: a class for pages, and a colour of its own for where there is no page. */
    record Look(String name, String fill, String stroke, String dashes) {
        static Look filled(String name, String fill) {
            return new Look(name, fill, "none", "");
        }

        static Look outlined(String name, String fill, String stroke) {
            return new Look(name, fill, stroke, "");
        }

        static Look dashed(String name, String stroke, String dashes) {
            return new Look(name, "none", stroke, dashes);
        }
    }

    /** Where a text is held. */
    enum Anchor {
        START,
        MIDDLE,
        END
    }

    /**
     * Writes a picture.
     *
     * @param says what it shows, for those who do not see it
     */
    static String of(String className, double width, double height, String says, Consumer<Svg> drawing) {
        StringWriter out = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newFactory().createXMLStreamWriter(out);
            xml.writeStartElement("svg");
            xml.writeDefaultNamespace(NAMESPACE);
            Svg svg = new Svg(xml);
            svg.attributes("class", className, "viewBox", "0 0 " + px(width) + " " + px(height));
            svg.attributes("width", px(width), "height", px(height), "role", "img");
            svg.attributes("font-family", "DejaVu Sans, sans-serif", "font-size", "13");
            xml.writeStartElement("title");
            xml.writeCharacters(says);
            xml.writeEndElement();
            drawing.accept(svg);
            xml.writeEndElement();
            xml.flush();
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        return out.toString();
    }

    void box(Look look, double x, double y, double width, double height) {
        element("rect", look, "x", px(x), "y", px(y), "width", px(width), "height", px(height));
    }

    void line(Look look, double x1, double y1, double x2, double y2) {
        element("line", look, "x1", px(x1), "y1", px(y1), "x2", px(x2), "y2", px(y2));
    }

    /** A path in the letters of SVG. */
    void path(Look look, String path, double strokeWidth) {
        element("path", look, "d", path, "stroke-width", px(strokeWidth), "stroke-linecap", "round");
    }

    void text(String className, Anchor anchor, double x, double y, String text) {
        try {
            xml.writeStartElement("text");
            attributes("class", className, "x", px(x), "y", px(y), "fill", "#222222");
            attributes("text-anchor", anchor.name().toLowerCase(java.util.Locale.ROOT));
            xml.writeCharacters(text);
            xml.writeEndElement();
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    private void element(String name, Look look, String... attributes) {
        try {
            xml.writeEmptyElement(name);
            attributes("class", look.name(), "fill", look.fill(), "stroke", look.stroke());
            if (!look.dashes().isEmpty()) {
                attributes("stroke-dasharray", look.dashes());
            }
            attributes(attributes);
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    private void attributes(String... pairs) {
        try {
            for (int i = 0; i < pairs.length; i += 2) {
                xml.writeAttribute(pairs[i], pairs[i + 1]);
            }
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Tenths of a pixel are enough, and the same on every machine. */
    static String px(double value) {
        return Plain.tenths(value);
    }
}
