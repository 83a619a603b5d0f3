package org.tunica.drawing;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** An SVG read back by the platform's own parser. */
final class Drawn {
    private final List<Element> elements = new ArrayList<>();

    private Drawn(Document document) {
        NodeList all = document.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            elements.add((Element) all.item(i));
        }
    }

    static Drawn of(String svg) {
        try {
            return new Drawn(DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8))));
        } catch (Exception e) {
            throw new AssertionError(svg, e);
        }
    }

    String title() {
        return texts("title").get(0);
    }

    List<String> texts(String tag) {
        return elements.stream()
                .filter(element -> element.getTagName().equals(tag))
                .map(Element::getTextContent)
                .toList();
    }

    List<Element> of(String tag, String name) {
        return elements.stream()
                .filter(element -> element.getTagName().equals(tag))
                .filter(element ->
                        Arrays.asList(element.getAttribute("class").split(" ")).contains(name))
                .toList();
    }

    int count(String name) {
        return of("rect", name).size() + of("path", name).size();
    }

    List<Double> widths(String name) {
        return of("rect", name).stream().map(rect -> number(rect, "width")).toList();
    }

    /** The length of the line of that class that is longest. */
    double ruler(String name) {
        return of("line", name).stream()
                .mapToDouble(line -> number(line, "x2") - number(line, "x1"))
                .max()
                .orElseThrow();
    }

    /** How wide each wall is drawn: its three coats together. */
    List<Double> walls() {
        List<Double> coats = widths("coat");
        List<Double> walls = new ArrayList<>();
        for (int i = 0; i < coats.size(); i += 3) {
            walls.add(coats.get(i) + coats.get(i + 1) + coats.get(i + 2));
        }
        return walls;
    }

    static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }
}
