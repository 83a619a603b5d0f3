package org.tunica.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.InventedFolder;
import org.tunica.plan.Advice;
import org.tunica.plan.SimilarAdvice;

class SimilarCommandTest extends AtTheCommandLine {
    private static final String CASE = "knowledge/demo/straight-thigh-trunk.json";

    @TempDir
    private Path folder;

    @Test
    void withoutABase_theFirstLineSaysThatItIsInvented() {
        run("similar", CASE, "--top", "2");
        assertEquals(0, code, err);
        assertTrue(out.startsWith("INVENTED: 2,000 past cases"), out);
        assertTrue(flat(out).contains(Advice.CAUTION) && flat(out).contains(SimilarAdvice.SAYS), out);
        assertTrue(out.contains("L1, LEFT great saphenous, thigh"), out);
        // a linear energy never stands without its power and pullback
        out.lines().filter(line -> line.contains("J/cm")).forEach(line -> assertTrue(line.contains("s/cm"), line));
        assertEquals("", err);
    }

    @Test
    void why_showsWhatEachAttributeGives() throws IOException {
        InventedFolder.write(folder, 30);
        run("similar", CASE, "--cases", folder.toString(), "--segment", "L1", "--why", "--top", "1", "--width", "120");
        assertEquals(0, code, err);
        assertTrue(
                flat(out)
                        .matches(
                                "INVENTED are (\\d+) of the \\1 treated segments searched; they prove nothing. Past.*"),
                out);
        for (String says : List.of("(invented)", "attribute", "relaxed lumen", "great saphenous", "Not compared:")) {
            assertTrue(out.contains(says), says + " in " + out);
        }
    }

    @Test
    void json_carriesItsFormatAndFilter() throws IOException {
        InventedFolder.write(folder, 30);
        run("similar", "--words", "closed", "--cases", folder.toString(), "--json", "--outcome", "closed");
        assertEquals(0, code, err);
        assertTrue(out.startsWith("{\n  \"format\" : \"tunica-similar/1\""), out);
        assertTrue(out.contains("\"outcome\" : \"closed\"") && out.contains("\"words\" : \"closed\""), out);
    }

    @Test
    void advise_showsThemOnlyWhenABaseIsGiven() throws IOException {
        InventedFolder.write(folder, 30);
        run("advise", CASE, "--cases", folder.toString());
        assertEquals(0, code, err);
        assertTrue(flat(out).contains(SimilarAdvice.SAYS), out);
    }

    @Test
    void wrongUsage_isTold() {
        for (List<String> args : List.of(
                List.of("similar"),
                List.of("similar", "--words", "pain", "--segment", "L1"),
                List.of("similar", CASE, "--segment", "L9"),
                List.of("similar", CASE, "--technique", "laser-1470-radal"),
                List.of("similar", CASE, "--top", "0"),
                List.of("similar", CASE, "--cases", folder.resolve("nowhere").toString()))) {
            run(args.toArray(String[]::new));
            assertEquals(2, code, args + out + err);
            assertEquals("", out);
        }
    }

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }
}
