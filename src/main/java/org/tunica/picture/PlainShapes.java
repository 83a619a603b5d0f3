package org.tunica.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Comment;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * Takes out of a drawing whatever refers to another part of it, for a document that takes in shapes and text alone. The edges it
 * was clipped to are lost; nothing of these charts reaches beyond its frame.
 */
final class PlainShapes {
    private static final Pattern COLOUR = Pattern.compile("rgb\\((\\d{1,3}),(\\d{1,3}),(\\d{1,3})\\)");

    private PlainShapes() {}

    static Element of(Element element) {
        List<Node> gone = new ArrayList<>();
        NodeList children = element.getChildNodes();
        for (int i = 0; i < children.getLength(); i++) {
            Node child = children.item(i);
            if (child instanceof Comment || "defs".equals(child.getNodeName())) {
                gone.add(child);
            } else if (child instanceof Element inner) {
                of(inner);
            }
        }
        gone.forEach(element::removeChild);
        element.removeAttribute("clip-path");
        element.removeAttribute("xml:space");
        colours(element.getAttributes());
        return element;
    }

    private static void colours(NamedNodeMap attributes) {
        for (int i = 0; i < attributes.getLength(); i++) {
            Node attribute = attributes.item(i);
            Matcher colour = COLOUR.matcher(attribute.getNodeValue());
            if (colour.matches()) {
                attribute.setNodeValue(String.format(
                        "#%02x%02x%02x",
                        Integer.parseInt(colour.group(1)),
                        Integer.parseInt(colour.group(2)),
                        Integer.parseInt(colour.group(3))));
            }
        }
    }
}
