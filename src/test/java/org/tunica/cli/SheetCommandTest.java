package org.tunica.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetCommandTest extends AtTheCommandLine {
    private static final String CASE = "knowledge/demo/straight-thigh-trunk.json";

    @TempDir
    private Path folder;

    @Test
    void writesHtmlAndPdf() throws IOException {
        Path html = folder.resolve("sheet.html");
        Path pdf = folder.resolve("sheet.pdf");
        run("sheet", CASE, "--chosen", "L1=laser-1470-radial", "--out", html.toString());
        assertEquals(0, code, err);
        assertTrue(Files.readString(html).contains("heat from a laser"));
        run("sheet", CASE, "--chosen", "L1=laser-1470-radial", "--out", pdf.toString());
        assertEquals(0, code, err);
        assertTrue(new String(Files.readAllBytes(pdf), StandardCharsets.ISO_8859_1).startsWith("%PDF-"));
    }

    @Test
    void printsWithoutAFile() {
        run("sheet", CASE);
        assertEquals(0, code, err);
        assertTrue(out.startsWith("DRAFT. Your leg veins") && out.contains("heat from a laser"), out);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    --chosen | L9=adhesive           | the case has none of that name
                    --chosen | L1=laser-1470-radal   | did you mean "laser-1470-radial"?
                    --chosen | L1=mechanochemical    | Settle this before a patient reads about it
                    --out    | sheet.txt             | --out must end in .html or .pdf, is sheet.txt
                    """)
    void saysWhatIsWrong(String option, String value, String expected) {
        run("sheet", CASE, option, value);
        assertEquals(2, code);
        assertTrue(err.contains(expected), err);
        assertFalse(err.contains("Exception"), err);
    }
}
