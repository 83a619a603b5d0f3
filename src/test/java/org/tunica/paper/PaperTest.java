package org.tunica.paper;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PaperTest {
    private static final String BAR =
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"120\" height=\"20\"><rect x=\"0\" y=\"2\" width=\"60\""
                    + " height=\"10\" fill=\"#0a7b3c\"/><text x=\"64\" y=\"11\" font-size=\"9\">half</text></svg>";

    private static Document document(Block... blocks) {
        return new Document(
                "en",
                "Invented page",
                "larkspur-01",
                "DRAFT",
                List.of("A caution for every page."),
                List.of(new Document.Section("What was done", List.of(blocks))));
    }

    private static Block longTable(int rows) {
        return new Block.Table(
                List.of("Number", "Twice"),
                IntStream.range(0, rows)
                        .mapToObj(i -> List.of("row " + i, Integer.toString(2 * i)))
                        .toList());
    }

    private static List<String> pages(byte[] pdf) throws IOException {
        try (PDDocument read = Loader.loadPDF(pdf)) {
            List<String> pages = new ArrayList<>();
            for (int page = 1; page <= read.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(read));
            }
            return pages;
        }
    }

    @Test
    void documentationExample_everyKindOfBlockIsOnThePage() throws IOException {
        Document document = document(
                new Block.Heading("Left leg"),
                new Block.Paragraph("Wall 0.38 mm \u2264 0.5 mm \u00b1 0.05, \u00b5g, \u03a9"),
                new Block.Warning("Not killed through"),
                new Block.Points(List.of("first point")),
                new Block.Lines(List.of(new Block.Line("Power", "12 W"))),
                longTable(1),
                new Block.Drawing(BAR, "a bar of one half"));
        String page = pages(Paper.pdf(document)).get(0);
        for (String said : List.of(
                "Invented page, larkspur-01",
                "DRAFT",
                "A caution for every page.",
                "What was done",
                "Left leg",
                "\u2264 0.5 mm \u00b1 0.05, \u00b5g, \u03a9",
                "Not killed through",
                "first point",
                "Power",
                "12 W",
                "row 0",
                "Page 1 of 1")) {
            assertTrue(page.contains(said), () -> said + " is not on the page: " + page);
        }
        assertTrue(Paper.xhtml(document).contains("aria-label=\"a bar of one half\""));
    }

    /** Letters of a drawing are outlines, so only looking at the page shows that it is there. */
    @Test
    void drawing_isOnThePage() throws IOException {
        try (PDDocument read = Loader.loadPDF(Paper.pdf(document(new Block.Drawing(BAR, "a bar"))))) {
            BufferedImage page = new PDFRenderer(read).renderImage(0);
            int barPixels = 0;
            for (int x = 0; x < page.getWidth(); x++) {
                for (int y = 0; y < page.getHeight(); y++) {
                    barPixels += (page.getRGB(x, y) & 0xffffff) == 0x0a7b3c ? 1 : 0;
                }
            }
            assertTrue(barPixels > 200, "only " + barPixels + " pixels of the bar");
        }
    }

    @Test
    void everyPage_hasReferenceMarkCautionNumberAndTheHeadOfTheTable() throws IOException {
        List<String> pages = pages(Paper.pdf(document(longTable(150))));
        assertTrue(pages.size() >= 3, "only " + pages.size() + " pages");
        for (int i = 0; i < pages.size(); i++) {
            String page = pages.get(i);
            assertTrue(page.contains("DRAFT") && page.contains("larkspur-01"), page);
            assertTrue(page.contains("A caution for every page."), page);
            assertTrue(page.contains("Page " + (i + 1) + " of " + pages.size()), page);
            assertTrue(page.contains("Number Twice"), page);
        }
    }

    @Test
    void sameDocument_sameBytes() {
        assertArrayEquals(Paper.pdf(document(longTable(3))), Paper.pdf(document(longTable(3))));
        assertEquals(Paper.xhtml(document(longTable(3))), Paper.xhtml(document(longTable(3))));
    }

    @Test
    void everyFontIsInsideTheFile() throws IOException {
        try (PDDocument read = Loader.loadPDF(Paper.pdf(document(longTable(1))))) {
            int fonts = 0;
            for (PDPage page : read.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    assertTrue(page.getResources().getFont(name).isEmbedded(), name::getName);
                    fonts++;
                }
            }
            assertEquals(2, fonts);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "a < b & c > d \"quoted\" 'single'",
                "</style></body><img src=x>",
                "&lt; &amp; &#65; ]]>"
            })
    void text_isPrintedAsItStands(String hostile) throws IOException {
        Document document = document(new Block.Paragraph(hostile));
        assertFalse(Paper.xhtml(document).contains("<script")
                || Paper.xhtml(document).contains("<img"));
        assertTrue(pages(Paper.pdf(document)).get(0).contains(hostile));
    }

    @Test
    void signsThatDoNotPrint_areShownAsTheirCode() throws IOException {
        String page = pages(Paper.pdf(document(new Block.Paragraph("a\u0000b\u202ec\ud800d"))))
                .get(0);
        assertTrue(page.contains("a\\u0000b\\u202ec\\ud800d"), page);
    }

    @Test
    void page_refersToNothingOutside() {
        String page = Paper.xhtml(document(new Block.Drawing(BAR, "a bar")));
        for (String reference : List.of("href", "src=", "url(", "@import", "<script", "<link")) {
            assertFalse(page.contains(reference), reference);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<svg xmlns='http://www.w3.org/2000/svg' width='1' height='1'><script>x</script></svg>",
                "<svg xmlns='http://www.w3.org/2000/svg' width='1' height='1'><image href='x'/></svg>",
                "<svg xmlns='http://www.w3.org/2000/svg' width='1' height='1' onload='x'/>",
                "<svg xmlns='http://www.w3.org/2000/svg' width='1' height='1'><rect fill='url(x)'/></svg>",
                "<svg xmlns='http://www.w3.org/2000/svg' width='1' height='1'><rect style='x'/></svg>",
                "<svg xmlns='http://www.w3.org/2000/svg' width='1'/>",
                "<svg width='1' height='1'/>",
                "<!DOCTYPE svg [<!ENTITY a 'b'>]><svg xmlns='http://www.w3.org/2000/svg' width='1' height='1'/>",
                "not xml"
            })
    void drawingThatHoldsMoreThanShapesAndText_isRefused(String svg) {
        assertThrows(IllegalArgumentException.class, () -> Paper.xhtml(document(new Block.Drawing(svg, "nothing"))));
    }

    @Test
    void rowOfAnotherLength_isRefused() {
        List<List<String>> rows = List.of(List.of("one"));
        assertThrows(IllegalArgumentException.class, () -> new Block.Table(List.of("a", "b"), rows));
    }

    @Test
    void languageThatIsNoTag_isRefused() {
        assertThrows(
                IllegalArgumentException.class, () -> new Document("en\" x=\"", "t", "r", "", List.of(), List.of()));
    }
}
