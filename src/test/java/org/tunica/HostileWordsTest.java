package org.tunica;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Bundle;
import org.tunica.physics.SegmentWindow;
import org.w3c.dom.Document;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Titles, reasons and names may hold any printable sign; wherever they are printed they stay words. */
class HostileWordsTest {
    private static final String HOSTILE =
            "<script>alert(document.cookie)</script> \"}], &lt;img src=x onerror='a()'&gt; ]]> --> ${x} \\";

    private static final Tunica TUNICA = Tunica.of(hostile());

    /** Every title and reason, and the names of all techniques, hold the same hostile words. */
    private static Bundle hostile() {
        String words = Matcher.quoteReplacement(HOSTILE);
        Map<String, String> texts = new TreeMap<>(Bundle.shipped().texts());
        texts.replaceAll((path, text) -> {
            if (path.endsWith(".rule")) {
                return text.replaceAll("(?m)^(rule \\S+  ).*$", "$1" + words)
                        .replaceAll("(?m)^  because .*(\\n    .*)*$", "  because " + words);
            }
            String quoted = Matcher.quoteReplacement("'" + HOSTILE.replace("'", "''") + "'");
            return path.startsWith("knowledge/techniques/")
                    ? text.replaceFirst("(?m)^says: .*$", "says: " + quoted)
                    : text;
        });
        return Bundle.of(texts);
    }

    @Test
    void inJson_theyAreTextsOfTheirFields() {
        CaseFile pregnant = TUNICA.readCase(
                "case", CaseTree.soundLeg().set("patient.pregnant", true).bytes());
        String json = TUNICA.toJson(TUNICA.advise(pregnant));
        JsonNode tree = new JsonMapper().readTree(json);
        assertEquals("tunica-advice/1", tree.get("format").stringValue());
        assertTrue(holds(tree), "the words do not come through whole");
    }

    private static boolean holds(JsonNode node) {
        if (node.isString()) {
            return node.stringValue().equals(HOSTILE);
        }
        return node.values().stream().anyMatch(HostileWordsTest::holds);
    }

    @Test
    void inADrawing_theyAreTextAndNoElement() throws Exception {
        CaseFile pregnant = TUNICA.readCase(
                "case", CaseTree.soundLeg().set("patient.pregnant", true).bytes());
        SegmentWindow window = TUNICA.heat().heatWindow(pregnant, "L1", "laser-1470-radial");
        byte[] svg = TUNICA.heat().picture(window, 1000).svg();
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        Document document = factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg));
        assertEquals(0, document.getElementsByTagName("script").getLength());
        assertEquals(0, document.getElementsByTagName("img").getLength());
        assertFalse(new String(svg, StandardCharsets.UTF_8).contains("<script"));
        assertTrue(document.getDocumentElement().getTextContent().contains("<script>alert(document.cookie)"));
    }

    @Test
    void aNumberTheModelsNeed_thatIsMissing_isAFaultOfTheBundle() {
        Map<String, String> texts = new TreeMap<>(Bundle.shipped().texts());
        texts.replaceAll((path, text) -> text.replace("heat.steam.pulse-time", "heat.steam.pulse-tame"));
        FaultyInput refused = assertThrows(FaultyInput.class, () -> Tunica.of(Bundle.of(texts)));
        assertEquals(
                "knowledge: no quantity heat.steam.pulse-time in knowledge/",
                refused.faults().get(0).toString());
    }
}
