package org.tunica.paper;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.w3c.dom.Text;

/**
 * Lets an SVG into a document: shapes and text only. What could fetch, run or refer to anything is refused, so a drawing
 * made of a case cannot do more than be seen.
 */
final class Drawings {
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final Set<String> ELEMENTS = Set.of(
            "svg",
            "g",
            "path",
            "line",
            "polyline",
            "polygon",
            "rect",
            "circle",
            "ellipse",
            "text",
            "tspan",
            "title",
            "desc");
    private static final Pattern ATTRIBUTE =
            Pattern.compile("(?!on|href|src|style$|class$|xlink|xml)[A-Za-z][A-Za-z0-9-]*");

    private Drawings() {}

    /**
     * The drawing as markup of the page.
     *
     * @throws IllegalArgumentException when it is no SVG, has no width and height, or holds more than shapes and text
     */
    static String markup(Block.Drawing drawing) {
        Element root = Xml.parse(drawing.svg()).getDocumentElement();
        if (!"svg".equals(root.getLocalName()) || !SVG.equals(root.getNamespaceURI())) {
            throw new IllegalArgumentException("svg must have an svg element at its root, got " + root.getNodeName());
        }
        if (root.getAttribute("width").isEmpty() || root.getAttribute("height").isEmpty()) {
            throw new IllegalArgumentException("svg must have a width and a height");
        }
        Markup out = new Markup();
        write(root, Map.of("xmlns", SVG, "role", "img", "aria-label", drawing.says()), out);
        return out.toString();
    }

    private static void write(Element element, Map<String, String> more, Markup out) {
        String name = element.getLocalName();
        if (!ELEMENTS.contains(name)) {
            throw new IllegalArgumentException("svg must hold shapes and text only, got element " + name);
        }
        Map<String, String> attributes = new TreeMap<>(attributes(element));
        attributes.putAll(more);
        out.open(name, attributes);
        NodeList children = element.getChildNodes();
        for (int i = 0; i < children.getLength(); i++) {
            child(children.item(i), out);
        }
        out.close(name);
    }

    private static void child(Node child, Markup out) {
        if (child instanceof Element element) {
            write(element, Map.of(), out);
        } else if (child instanceof Text text) {
            out.text(text.getData().replaceAll("\\s+", " "));
        }
    }

    private static Map<String, String> attributes(Element element) {
        Map<String, String> kept = new TreeMap<>();
        NamedNodeMap attributes = element.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            Node attribute = attributes.item(i);
            if (!attribute.getNodeName().equals("xmlns")) {
                kept.put(checked(attribute), attribute.getNodeValue());
            }
        }
        return kept;
    }

    private static String checked(Node attribute) {
        String name = attribute.getNodeName();
        if (!ATTRIBUTE.matcher(name).matches() || attribute.getNodeValue().contains("(") && !name.equals("transform")) {
            throw new IllegalArgumentException("svg must not refer to anything, got attribute " + name);
        }
        return name;
    }
}
