package org.tunica.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tunica.CaseTree;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.heat.HeatSetting;
import org.tunica.physics.HeatOutlook;
import org.tunica.physics.SegmentWindow;
import org.w3c.dom.Document;
import tools.jackson.databind.node.ObjectNode;

class WindowPictureTest {
    private static final Tunica TUNICA = Tunica.shipped();

    private static SegmentWindow window(String technique) {
        return window(CaseTree.demo("straight-thigh-trunk"), technique);
    }

    private static SegmentWindow window(CaseTree tree, String technique) {
        return TUNICA.heat().heatWindow(TUNICA.readCase("case", tree.bytes()), "L1", technique);
    }

    @Test
    void documentationExample_aWindowAsSvg() throws Exception {
        SegmentWindow window = window("laser-1470-radial");
        String says = Drawn.words(TUNICA.heat().picture(window, 1000).svg());
        for (String label : List.of(
                "Segment L1, great saphenous, thigh: 1470 nm laser, radial fibre",
                "power, W",
                "pullback, s/cm (higher = slower)",
                "whole wall dies at once",
                "whole wall dies at once or later",
                "char starts",
                "60 J/cm = W x s/cm",
                "ceiling 15 W",
                "ceiling 12 s/cm (common practice, no published source)",
                "ceiling 100 J/cm = W x s/cm",
                "to consider: " + Figures.pulled(Figures.proposedPulled(window).orElseThrow()),
                "licensed specialist decides",
                "DRAFT")) {
            assertTrue(says.contains(label), label + " in\n" + says);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {500, 1000, 1600})
    void png_hasTheWidthAskedForAndIsNotBlank(int widthPx) throws IOException {
        byte[] bytes =
                TUNICA.heat().picture(window("rf-bipolar-pullback"), widthPx).png();
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(bytes));
        assertEquals(widthPx, image.getWidth());
        assertTrue(image.getHeight() > widthPx, "height " + image.getHeight());
        Set<Integer> colours = new HashSet<>();
        int dark = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int rgb = image.getRGB(x, y);
                colours.add(rgb);
                dark += (rgb & 0xFF) < 0x60 ? 1 : 0;
            }
        }
        assertTrue(colours.size() > 100, colours.size() + " colours");
        double darkShare = (double) dark / (image.getWidth() * image.getHeight());
        assertTrue(darkShare > 0.01 && darkShare < 0.3, "dark " + darkShare);
    }

    @Test
    void svg_scalesWithTheWidth() throws Exception {
        Document document =
                Drawn.document(TUNICA.heat().picture(window("steam"), 700).svg());
        assertEquals("700", document.getDocumentElement().getAttribute("width"));
        assertTrue(document.getDocumentElement().getAttribute("viewBox").startsWith("0 0 700 "));
        assertEquals(1, document.getElementsByTagNameNS("*", "title").getLength());
    }

    @Test
    void sameWindow_sameBytes() {
        WindowPicture one = TUNICA.heat().picture(window("laser-1470-radial"), 800);
        WindowPicture other = TUNICA.heat().picture(window("laser-1470-radial"), 800);
        assertArrayEquals(one.svg(), other.svg());
        assertArrayEquals(one.png(), other.png());
    }

    @ParameterizedTest
    @CsvSource({"rf-segmental-7cm, cycles, 1 cycle", "steam, pulses, 1 pulse/cm"})
    void heldDevices_getATableAndSaySo(String technique, String repeats, String first) throws Exception {
        SegmentWindow window = window(technique);
        assertTrue(window.map().isEmpty());
        ChartWords words = TUNICA.heat().words(window);
        assertTrue(words.caption().contains("neither power nor pullback"), words.caption());
        assertTrue(words.caption().contains("number of " + repeats), words.caption());
        assertTrue(words.rows().get(0).get(0).startsWith(first));
        assertFalse(Drawn.words(TUNICA.heat().picture(window, 1000).svg()).contains("power, W"));
    }

    @Test
    void gapNotRecorded_isNeverTakenForSafe() {
        CaseTree tree = CaseTree.demo("straight-thigh-trunk");
        segment(tree).remove("nerve");
        segment(tree).remove("depthToSkinMm");
        SegmentWindow window = window(tree, "laser-1470-radial");
        ChartWords words = TUNICA.heat().words(window);
        assertEquals(
                2,
                words.notes().stream()
                        .filter(note -> note.contains("NOT RECORDED"))
                        .count());
        words.rows().forEach(row -> assertEquals(List.of("?", "?"), row.subList(5, 7)));
        assertTrue(window.proposed().isEmpty());
        assertTrue(words.notes().get(0).contains("stands as measure first"), words.notes()::toString);
        assertTrue(words.notes().get(1).startsWith("No setting is proposed"), words.notes()::toString);
    }

    @Test
    void techniqueTheRulesExclude_getsNoSettingAndSaysWhy() {
        SegmentWindow window = window(CaseTree.demo("pregnancy"), "laser-1470-radial");
        assertTrue(window.proposed().isEmpty());
        String first = TUNICA.heat().words(window).notes().get(0);
        assertTrue(first.contains("LEFT leg") && first.contains("excluded") && first.contains("EXC-001"), first);
    }

    @Test
    void roomNotRecorded_isNamedAsAssumed() {
        CaseTree tree = CaseTree.demo("straight-thigh-trunk");
        ((ObjectNode) tree.root().get("room")).remove("tumescent");
        SegmentWindow window = window(tree, "laser-1470-radial");
        assertEquals(2, window.assumed().size());
        assertTrue(TUNICA.heat().words(window).notes().containsAll(window.assumed()));
    }

    @Test
    void veinThatKeepsItsBlood_saysSo() {
        CaseTree tree = CaseTree.demo("straight-thigh-trunk");
        ((ObjectNode) tree.root().get("patient").get("canLie")).put("headDown", false);
        ChartWords words = TUNICA.heat().words(window(tree, "laser-1470-radial"));
        assertTrue(words.subtitle().contains("BLOOD LEFT IN THE VEIN"), words.subtitle());
        assertTrue(String.join(" ", words.notes()).contains("extrapolated"));
    }

    @Test
    void proposal_isTheOneOfTheAdvice() {
        SegmentWindow window = window("rf-bipolar-pullback");
        HeatSetting.Pulled pulled =
                (HeatSetting.Pulled) window.proposed().orElseThrow().setting();
        CaseFile caseFile =
                TUNICA.readCase("case", CaseTree.demo("straight-thigh-trunk").bytes());
        HeatOutlook outlook = TUNICA.physics()
                .derive(caseFile, caseFile.limbs().get(0).segments().get(0))
                .options()
                .get("rf-bipolar-pullback")
                .heat()
                .orElseThrow();
        assertEquals(outlook.proposed(), window.proposed());
        assertTrue(pulled.powerW() <= window.powerW().value());
        assertTrue(pulled.pullbackSPerCm() <= window.pullbackSPerCm().value());
        assertTrue(pulled.energyJPerCm() <= window.energyJPerCm().value());
        assertTrue(TUNICA.heat().words(window).rows().stream()
                .anyMatch(row -> row.get(0).equals(Figures.number(pulled.powerW()) + " W @")));
    }

    @Test
    void energyInTheTable_isPowerTimesPullback() {
        int checked = 0;
        for (List<String> row : TUNICA.heat().words(window("laser-1470-radial")).rows()) {
            double powerW = Double.parseDouble(row.get(0).split(" ")[0]);
            String[] cell = row.get(1).replaceAll("[()]", "").split(" ");
            if (!cell[0].startsWith(">") && !cell[0].startsWith("<")) {
                assertEquals(powerW * Double.parseDouble(cell[0]), Double.parseDouble(cell[1]), 0.05 * powerW + 0.5);
                checked++;
            }
        }
        assertTrue(checked > 4, checked + " rows");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 499, 4001})
    void width_isRefusedOutsideItsRange(int widthPx) {
        SegmentWindow window = window("steam");
        assertThrows(IllegalArgumentException.class, () -> TUNICA.heat().picture(window, widthPx));
    }

    private static ObjectNode segment(CaseTree tree) {
        return (ObjectNode) tree.root().get("limbs").get(0).get("segments").get(0);
    }
}
