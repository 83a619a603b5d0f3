package org.tunica.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;

/** A drawing read back. */
final class Drawn {
    private Drawn() {}

    /** Every text of the drawing, one a line. */
    static String words(byte[] svg) throws Exception {
        Document document = document(svg);
        assertEquals("svg", document.getDocumentElement().getLocalName());
        List<String> words = new ArrayList<>();
        NodeList texts = document.getElementsByTagNameNS("*", "text");
        for (int i = 0; i < texts.getLength(); i++) {
            words.add(texts.item(i).getTextContent());
        }
        return String.join("\n", words);
    }

    static Document document(byte[] svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg));
    }
}
